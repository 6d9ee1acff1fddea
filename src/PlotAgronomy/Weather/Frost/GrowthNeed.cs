using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <summary>Days that a kind needs before the frost that stops it, by use.</summary>
internal sealed class GrowthNeed
{
    private static readonly Table<GrowthNeed> Table = new("Weather/Data/growth-needs.csv", row => new(row));

    private readonly ImmutableArray<string> kindIds;

    private GrowthNeed(CsvRow row)
    {
        kindIds = row.List("kind_ids");
        Use = row.Text("use");
        DaysLow = row.Integer("days_low");
        DaysHigh = row.Integer("days_high");
        Origin = row.Origin();
    }

    internal string Use { get; }

    internal int DaysLow { get; }

    internal int DaysHigh { get; }

    internal Origin Origin { get; }

    /// <summary>The needs of a kind; a row that names no kind holds for every cover.</summary>
    internal static IEnumerable<GrowthNeed> Of(CropKind kind) =>
        Table.Rows.Where(r => r.kindIds.IsEmpty || r.kindIds.Contains(kind.Id));
}
