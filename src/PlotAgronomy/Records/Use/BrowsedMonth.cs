using System.Collections.Immutable;

namespace PlotAgronomy.Records;

/// <summary>Browse of one kind in one month.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class BrowsedMonth
{
    private readonly double[] plants;

    private BrowsedMonth(int year, int month, CropKind? kind, double[] plants)
    {
        Year = year;
        Month = month;
        Kind = kind;
        this.plants = plants;
    }

    /// <summary>Gets the year.</summary>
    public int Year { get; }

    /// <summary>Gets the month, from 1.</summary>
    public int Month { get; }

    /// <summary>Gets the kind; null where the whole plot was looked at.</summary>
    public CropKind? Kind { get; }

    /// <summary>Gets the plants that were looked at.</summary>
    public int Plants => (int)plants.Sum();

    /// <summary>Gets the part that was eaten, in percent.</summary>
    public double UsePercent => BrowseMath.Use(plants);

    /// <summary>Gets half the range of the part eaten, in percent: the truth lies within with 95 %.</summary>
    public double MarginPercent => BrowseMath.Margin(plants);

    /// <summary>Month, kind, use and how many plants it rests on.</summary>
    /// <returns>Text such as <c>2024-11 oats: 32 % of 50 plants</c>.</returns>
    public override string ToString() =>
        $"{MonthText} {Kind?.ShortName ?? "plot"}: {Amounts.Print(UsePercent, 0)} % of {Amounts.Print(Plants, 0)} plants";

    internal string MonthText => FieldWriter.Of(new DateOnly(Year, Month, 1))[..7];

    internal static BrowsedMonth Of(int year, int month, CropKind? kind, IEnumerable<BrowseEntry> entries) =>
        new(year, month, kind, BrowseMath.Pooled(entries));

    internal WorkedLine Line()
    {
        ImmutableArray<(string, string)> places =
        [
            .. BrowseMath.Places(plants),
            ("month", MonthText),
            ("kind", Kind?.ShortName ?? "plot"),
        ];
        return RecordFormulas.All["record-browse"].Line($"{Amounts.Print(UsePercent, 1)} %", places.AsSpan());
    }
}
