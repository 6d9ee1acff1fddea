using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>Limits of totals, from the table.</summary>
internal static class CrowdingLimits
{
    private static readonly Table<(double MostKinds, TotalLimit Limit)> Totals = new("Blends/Data/stand-totals.csv", r =>
        (r.NumberOrNull("kinds_high") ?? double.PositiveInfinity, new TotalLimit(r.Number("total_high"), r.Origin()))
    );

    internal static TotalLimit TotalFor(int kinds) => Totals.Rows.First(t => kinds <= t.MostKinds).Limit;

    internal readonly record struct TotalLimit(double High, Origin Origin);
}
