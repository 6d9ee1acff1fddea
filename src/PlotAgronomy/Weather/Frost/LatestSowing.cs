using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <summary>The latest sensible date to sow a kind for one use: counted back from a frost.</summary>
/// <remarks>Rain, soil and day length are not considered: a printed planting window goes before it.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class LatestSowing : IWorkedResult
{
    private readonly GrowthNeed need;
    private readonly double frostDay;
    private readonly int year;
    private readonly int buffer;
    private readonly FrostDates frost;

    private LatestSowing(CropKind kind, GrowthNeed need, FrostDates frost, double frostDay, int year, int buffer)
    {
        Kind = kind;
        this.need = need;
        this.frost = frost;
        this.frostDay = frostDay;
        this.year = year;
        this.buffer = buffer;
    }

    /// <summary>Gets the kind.</summary>
    public CropKind Kind { get; }

    /// <summary>Gets the use, such as <c>full yield</c>.</summary>
    public string Use => need.Use;

    /// <summary>Gets the frost that is counted back from.</summary>
    public DateOnly Frost => YearDay.In(year, frostDay);

    /// <summary>Gets the cold that harms the kind, as publications print it: where it is far below freezing, the frost that is
    /// counted back from stops growth and need not kill.</summary>
    public ImmutableArray<ColdLimit> HarmedBy => ColdLimit.Of(Kind);

    /// <summary>Gets the latest date where the kind needs the most days that are printed.</summary>
    public DateOnly Safe => Back(need.DaysHigh);

    /// <summary>Gets the latest date where it needs the fewest.</summary>
    public DateOnly Latest => Back(need.DaysLow);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => frost.Findings;

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => need.Origin.Sources;

    /// <summary>Counts back from a frost, for each use that is printed for a kind.</summary>
    /// <param name="kind">Kind.</param>
    /// <param name="frost">Dates of the frost that stops it.</param>
    /// <param name="chance">Chance of a frost by the date that is counted back from: half, or 10 % to be safe.</param>
    /// <param name="year">Year.</param>
    /// <param name="bufferDays">Days to spare; at most a year.</param>
    /// <returns>The dates; none where a frost is not that likely.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static ImmutableArray<LatestSowing> Of(CropKind kind, FrostDates frost, Fraction chance, int year, int bufferDays = 0)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(frost);
        Guard.Inside(chance.Value, 0, 1, "(a chance)", nameof(chance));
        YearDay.Checked(year);
        Guard.Between(bufferDays, 0, YearDay.Days, "days", nameof(bufferDays));
        return frost.DayWith(chance.Value) is { } day
            ? [.. GrowthNeed.Of(kind).Select(need => new LatestSowing(kind, need, frost, Math.Floor(day), year, bufferDays))]
            : [];
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [Line(need.DaysHigh), Line(need.DaysLow)];

    private WorkedLine Line(int days) =>
        WeatherFormulas
            .All["weather-sow-by"]
            .Line(
                $"day {Amounts.Print(FrostMath.SowBy(frostDay, days, buffer), 0)} of the year, {DateText.Of(Back(days))}",
                ("frost", Amounts.Print(frostDay, 0)),
                ("days", Amounts.Print(days, 0)),
                ("buffer", Amounts.Print(buffer, 0))
            )
            .From(need.Origin);

    private DateOnly Back(int days) => Frost.AddDays(-(days + buffer));

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
