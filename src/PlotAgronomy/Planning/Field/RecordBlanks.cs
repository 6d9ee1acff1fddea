using System.Collections.Immutable;

namespace PlotAgronomy.Planning;

/// <summary>The blanks of a plan: each load, how the spreader stood, the rain, the stand, what it was given later.</summary>
internal static class RecordBlanks
{
    internal static ImmutableArray<RecordBlank> Of(PlotAnswers answers, ImmutableArray<PlannedWalk> walks)
    {
        var passes = answers.Spreading.TryGet(out var spreading) ? spreading.Passes : [];
        (RecordTopic Topic, string? Subject)[] asked =
        [
            .. walks
                .Where(w => w.Seed is null)
                .Select(w => (w.Lime is null ? RecordTopic.Fertilizer : RecordTopic.Lime, (string?)w.What)),
            .. passes.Select(p => (RecordTopic.Seed, (string?)p.Names)),
            .. walks.Where(w => w.Seed is not null).Select(w => (RecordTopic.Setting, (string?)w.What)),
            .. passes.IsEmpty ? [] : Seen(answers.Plan.Method),
            .. answers.Fertilizer.Told.Later.Select(l => (RecordTopic.Dressing, (string?)l.Product.Name)).Distinct(),
        ];
        return
        [
            .. asked.Select(
                (blank, i) =>
                    new RecordBlank
                    {
                        Number = i + 1,
                        Topic = blank.Topic,
                        Subject = blank.Subject,
                    }
            ),
        ];
    }

    /// <summary>Seed on frozen ground waits for no rain, and is up in spring.</summary>
    private static (RecordTopic Topic, string? Subject)[] Seen(PlantingMethod? method) =>
        method == PlantingMethod.FrostSeeded
            ? [(RecordTopic.Stand, "once the ground is warm")]
            : [(RecordTopic.Rain, null), (RecordTopic.Stand, null)];
}
