using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>Reads the rating scales and their classes.</summary>
internal static class RatingTables
{
    private static readonly Lazy<ImmutableArray<(string System, RatingScale Scale)>> Scales = new(Load);

    internal static ImmutableArray<RatingScale> Of(string systemId) =>
        [.. Scales.Value.Where(s => s.System == systemId).Select(s => s.Scale)];

    private static ImmutableArray<(string, RatingScale)> Load()
    {
        var classes = Table.Grouped("Nutrients/Data/rating-classes.csv", r => r.Text("scale_id"), PrintedClass.FromRow).Value;
        return [.. Table.Read("Nutrients/Data/rating-scales.csv", row => (
                    row.Text("system_id"),
                    new RatingScale
                    {
                        Id = row.Text("id"),
                        Analyte = row.Choice<SoilAnalyte>("analyte"),
                        Extractants = row.Choices<Extractant>("extractants"),
                        Unit = row.ChoiceOrNull<SoilTestUnit>("unit"),
                        Crops = row.Choices<CropRow>("crops"),
                        Condition = row.ChoiceOrNull<ScaleCondition>("condition") ?? ScaleCondition.None,
                        Scope = row.Text("scope"),
                        Classes = ClassesFrom(classes[row.Text("id")]),
                        Sources = [.. classes[row.Text("id")].SelectMany(c => c.Origin.Sources).Concat(row.Sources()).Distinct()],
                    }
                ))];
    }

    /// <summary>Classes that each start where the one below them ends.</summary>
    private static ImmutableArray<RatingClass> ClassesFrom(IEnumerable<PrintedClass> printed)
    {
        var classes = ImmutableArray.CreateBuilder<RatingClass>();
        foreach (var row in printed)
        {
            var below = classes.Count == 0 ? null : classes[^1];
            classes.Add(
                new RatingClass
                {
                    Order = row.Order,
                    Name = row.Name,
                    Standing = row.Standing,
                    PrintedLow = row.Low,
                    PrintedHigh = row.High,
                    HighIncluded = row.HighIncluded,
                    StartsAt = below?.PrintedHigh ?? 0,
                    StartIncluded = below is null || !below.HighIncluded,
                    Origin = row.Origin,
                }
            );
        }

        return classes.ToImmutable();
    }

    private sealed record PrintedClass(
        int Order,
        string Name,
        RatingStanding Standing,
        double Low,
        double? High,
        bool HighIncluded,
        Origin Origin
    )
    {
        internal static PrintedClass FromRow(CsvRow row) =>
            new(
                row.Integer("order"),
                row.Text("class"),
                row.Choice<RatingStanding>("standing"),
                row.Number("printed_low"),
                row.NumberOrNull("printed_high"),
                row.YesOrNo("high_included"),
                row.Origin()
            );
    }
}
