using System.Collections.Immutable;
using PlotAgronomy.Seeds;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Calendar;

/// <summary>What the dates make of one kind sown on a day: printed windows, frost counted back, first worthwhile
/// forage.</summary>
/// <remarks>A printed planting window goes before a count back. A kind that lives through winter is not stopped by the first
/// freeze, so frost sets it no last day.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class KindDates
{
    private readonly FrostDates? frost;

    private KindDates(CropKind kind, DateOnly sowOn, PlantingRegion? region, FrostDates? frost)
    {
        Kind = kind;
        SowOn = sowOn;
        this.frost = frost;
        Windows = region is null ? [] : PlantingWindow.Published(kind, region);
    }

    /// <summary>Gets the kind.</summary>
    public CropKind Kind { get; }

    /// <summary>Gets the day of sowing.</summary>
    public DateOnly SowOn { get; }

    /// <summary>Gets the planting dates that were read for the region of the plot; none where the region is not known or
    /// nothing was read.</summary>
    public ImmutableArray<PlantingWindow> Windows { get; }

    /// <summary>Gets whether the printed dates allow the day; null where none were read.</summary>
    public bool? IsInSeason => Windows.IsEmpty ? null : Allowing.Any();

    /// <summary>Gets a value indicating whether the first freezes end its growth: a kind that overwinters, or stands cold far
    /// below them, grows on.</summary>
    public bool StopsAtFrost => Kind.StopsAtFrost;

    /// <summary>Gets the first day of worthwhile forage where all goes well; null where no days are printed.</summary>
    public DateOnly? ForageFrom => Kind.UsableForage is { } days ? SowOn.AddDays(days.From) : null;

    /// <summary>Gets the day by which there is worthwhile forage where the printed days are many; null where none are
    /// printed.</summary>
    public DateOnly? ForageBy => Kind.UsableForage is { } days ? SowOn.AddDays(days.To) : null;

    /// <summary>Gets the date of an early freeze, one year of ten; null where frost is not known.</summary>
    public DateOnly? EarlyFrost => FrostWith(Early.Value);

    /// <summary>Gets the date by which the first freeze came in half of the years; null where frost is not known.</summary>
    public DateOnly? MiddleFrost => FrostWith(0.5);

    /// <summary>Gets the days left to an early freeze; null where frost is not known.</summary>
    public int? DaysToEarlyFrost => EarlyFrost is { } early ? early.DayNumber - SowOn.DayNumber : null;

    /// <summary>Gets the latest days for each use, counted back from an early freeze.</summary>
    public ImmutableArray<LatestSowing> BeforeEarlyFrost => Latest(Early.Value);

    /// <summary>Gets the latest days for each use, counted back from the freeze of half the years.</summary>
    public ImmutableArray<LatestSowing> BeforeMiddleFrost => Latest(0.5);

    /// <summary>Gets the last of the printed days that allow this sowing; null where none do.</summary>
    public DateOnly? LastPrinted => Allowing.Select(w => w.LastDay(SowOn.Year)).Max();

    /// <summary>Gets the latest sensible day: the printed one, else counted back from an early freeze where that ends the kind;
    /// null where neither is known.</summary>
    public DateOnly? LastSensible =>
        LastPrinted
        ?? (StopsAtFrost ? BeforeEarlyFrost.Select(l => (DateOnly?)l.Latest).Append(LastForForage(Early)).Max() : null);

    /// <summary>The last day from which there is forage before an early freeze; null where frost or days are not known.</summary>
    internal DateOnly? LastBeforeFrost => LastForForage(Early);

    /// <summary>The printed windows that allow the day.</summary>
    internal IEnumerable<PlantingWindow> Allowing => Windows.Where(w => w.Allows(SowOn));

    /// <summary>The next day on which printed dates begin; null where none do.</summary>
    internal DateOnly? OpensAgain =>
        Windows.SelectMany(w => new[] { w.FirstDay(SowOn.Year), w.FirstDay(SowOn.Year + 1) }).Where(day => day > SowOn).Min();

    /// <summary>Works the dates of a kind out.</summary>
    /// <param name="kind">Kind.</param>
    /// <param name="sowOn">Day of sowing.</param>
    /// <param name="region">Region of the plot, or null.</param>
    /// <param name="frost">Dates of the first freeze, or null.</param>
    /// <returns>The dates.</returns>
    /// <exception cref="ArgumentNullException">No kind.</exception>
    public static KindDates Of(CropKind kind, DateOnly sowOn, PlantingRegion? region = null, FrostDates? frost = null)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return new(kind, sowOn, region, frost);
    }

    /// <summary>The last day from which there is forage before a freeze, by the fewest printed days.</summary>
    /// <param name="chance">Chance of a freeze by the date that is counted back from.</param>
    /// <returns>The day; null where frost or days are not known.</returns>
    public DateOnly? LastForForage(Fraction chance) => Back(FrostWith(chance.Value), Kind.UsableForage?.From);

    /// <summary>The last day from which there is forage before a freeze, by the most printed days.</summary>
    /// <param name="chance">Chance of a freeze by the date that is counted back from.</param>
    /// <returns>The day; null where frost or days are not known.</returns>
    public DateOnly? SafeForForage(Fraction chance) => Back(FrostWith(chance.Value), Kind.UsableForage?.To);

    private static Fraction Early => Fraction.FromPercent(WeatherConstants.All["early-frost-chance"]);

    private static DateOnly? Back(DateOnly? frost, int? days) =>
        frost is { } date && days is { } many ? date.AddDays(-many) : null;

    private DateOnly? FrostWith(double chance) => frost?.DateWith(Fraction.FromValue(chance), SowOn.Year);

    private ImmutableArray<LatestSowing> Latest(double chance) =>
        frost is null ? [] : LatestSowing.Of(Kind, frost, Fraction.FromValue(chance), SowOn.Year);

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        LastSensible is { } last ? $"{Kind.ShortName}: sow by {CalendarText.Date(last)}" : $"{Kind.ShortName}: no last day known";
}
