using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using PlotAgronomy.Reference;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Planning;

/// <summary>What a season sows: only kinds that the verdict lets in.</summary>
internal static class SeasonPasses
{
    /// <summary>The passes as they are spread; where they are not known, seed that is covered before seed that is
    /// pressed in; of a stand its kinds. None where nothing is sown.</summary>
    internal static ImmutableArray<SeasonPass> Of(PlotAnswers answers)
    {
        if (GrownKinds.IsUpkeep(answers.Plan))
        {
            return [new() { Kinds = TimingSolver.Kinds(answers.Plan) }];
        }

        if (answers.Spreading.OrNull() is { } spreading)
        {
            return
            [
                .. spreading.Passes.Select(p => new SeasonPass
                {
                    Kinds = [.. p.Kinds.Select(k => k.Planned.Kind)],
                    IsCovered = p.Group.SownBeforeCovering,
                }),
            ];
        }

        ImmutableArray<CropKind> sown =
        [
            .. answers.Verdict.TryGetPart(out var verdict) ? verdict.Sown.Select(v => v.Planned.Kind) : [],
        ];
        return
        [
            .. sown.GroupBy(k => SeedPlacing.Of(k, answers.Plan.Method) == SeedPlacement.Covered)
                .OrderByDescending(g => g.Key)
                .Select(g => new SeasonPass { Kinds = [.. g], IsCovered = g.Key }),
        ];
    }

    /// <summary>What is sown in a pass; of the seed that is weighed out what is planned in it, while passes are not
    /// known.</summary>
    internal static ImmutableArray<SownKind> KindsOf(PlotAnswers answers, int pass) =>
        answers.Spreading.OrNull() is { } spreading
            ? spreading.Passes.FirstOrDefault(p => p.Number == pass)?.Kinds ?? []
            : [.. (answers.Seed.OrNull()?.Kinds ?? []).Where(k => Of(answers)[pass - 1].Kinds.Contains(k.Planned.Kind))];
}
