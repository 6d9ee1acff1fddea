using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;

namespace PlotAgronomy.Seeds;

/// <summary>One publication's planting dates for a kind in a region. Publications differ: none is averaged with
/// another.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PlantingWindow
{
    private static readonly EnumWords<PlantingSeason> SeasonWords = EnumWords<PlantingSeason>.FromNames();

    private static readonly ConcurrentDictionary<string, ImmutableArray<PlantingWindow>> ByKind = new(StringComparer.Ordinal);

    private readonly (int Month, int Day)? first;
    private readonly (int Month, int Day)? last;

    /// <summary>The row's method is the season, its note the rule, its low and high the days.</summary>
    internal PlantingWindow(CropKind kind, KindObservation dates)
    {
        Kind = kind;
        Region = dates.Region(PlantingRegion.Of);
        Season = dates.MethodOf<PlantingSeason>();
        Rule = dates.Rule<PlantingRule>();
        first = dates.FirstDay();
        last = dates.LastDay();
        IsMonthsOnly = dates.IsMonthsOnly;
        Note = dates.Locator;
        Evidence = new(dates.Sources, Note ?? SeasonWords[Season], dates.Status);
    }

    /// <summary>Gets the kind, as it is published.</summary>
    public CropKind Kind { get; }

    /// <summary>Gets the region.</summary>
    public PlantingRegion Region { get; }

    /// <summary>Gets the season.</summary>
    public PlantingSeason Season { get; }

    /// <summary>Gets what the dates mean.</summary>
    public PlantingRule Rule { get; }

    /// <summary>Gets the place or circumstance, or null.</summary>
    public string? Note { get; }

    /// <summary>Gets a value indicating whether the publication names months only; such dates speak where no publication gives
    /// days.</summary>
    public bool IsMonthsOnly { get; }

    /// <summary>Gets the source.</summary>
    public Origin Evidence { get; }

    /// <summary>Gets the finding that dates from memory carry; empty for dates that were read.</summary>
    public ImmutableArray<Finding> Findings =>
        Evidence.FindingFor($"the planting dates of {Kind.ShortName}") is { } memory ? [memory] : [];

    /// <summary>The dates that were read in a publication.</summary>
    /// <param name="kind">Kind.</param>
    /// <param name="region">Region.</param>
    /// <returns>Each publication's dates; none when nothing was read.</returns>
    public static ImmutableArray<PlantingWindow> Published(CropKind kind, PlantingRegion region) =>
        Of(kind, region, fromMemory: false);

    /// <summary>The dates that are remembered only; each carries its finding.</summary>
    /// <param name="kind">Kind.</param>
    /// <param name="region">Region.</param>
    /// <returns>The dates.</returns>
    public static ImmutableArray<PlantingWindow> FromMemory(CropKind kind, PlantingRegion region) =>
        Of(kind, region, fromMemory: true);

    /// <summary>First day in a year.</summary>
    /// <param name="year">Year; from 1 to 9999.</param>
    /// <returns>The day; null when only a latest day is known, or planting is not recommended.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A year outside its range.</exception>
    public DateOnly? FirstDay(int year) => On(first, year);

    /// <summary>Last day in a year.</summary>
    /// <param name="year">Year; from 1 to 9999.</param>
    /// <returns>The day; null when planting is not recommended.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A year outside its range.</exception>
    public DateOnly? LastDay(int year) => On(last, year);

    /// <summary>Says whether these dates allow planting on a day; both ends belong to the window.</summary>
    /// <param name="day">Day.</param>
    /// <returns>True when they do. A latest day alone allows every earlier day of its year.</returns>
    public bool Allows(DateOnly day) =>
        Rule != PlantingRule.NotRecommended
        && (FirstDay(day.Year) is not { } from || day >= from)
        && LastDay(day.Year) is { } to
        && day <= to;

    /// <summary>Text such as <c>09-01 to 10-15</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        Rule switch
        {
            PlantingRule.Window => $"{Text(first)} to {Text(last)}",
            PlantingRule.Latest => $"latest {Text(last)}",
            _ => "not recommended",
        };

    /// <summary>Of one kind, region and season: memory only where nothing was read, months only where no publication gives
    /// days.</summary>
    private static IEnumerable<PlantingWindow> Speaking(IEnumerable<PlantingWindow> windows)
    {
        var all = windows.ToList();
        var read = all.Where(w => w.Evidence.Status != DataStatus.Memory).ToList();
        bool hasDays = read.Exists(w => !w.IsMonthsOnly && w.Rule == PlantingRule.Window);
        return read.Count == 0 ? all : read.Where(w => !w.IsMonthsOnly || !hasDays);
    }

    private static ImmutableArray<PlantingWindow> Of(CropKind kind, PlantingRegion region, bool fromMemory)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(region);
        return
        [
            .. AllOf(kind.Id).Where(w => w.Region == region && (w.Evidence.Status == DataStatus.Memory) == fromMemory),
        ];
    }

    private static ImmutableArray<PlantingWindow> AllOf(string id) =>
        KindFile.Find(id) is { } file ? ByKind.GetOrAdd(id, _ => Read(file)) : [];

    private static ImmutableArray<PlantingWindow> Read(KindFile file)
    {
        var kind = KindCatalog.Standard.Find(file.Id);
        return
        [
            .. file.PlantingWindows.Select(o => new PlantingWindow(kind, o))
                .GroupBy(w => new { w.Region, w.Season })
                .SelectMany(Speaking),
        ];
    }

    private static DateOnly? On((int Month, int Day)? date, int year)
    {
        Guard.Between(year, 1, 9999, "(a year)", nameof(year));
        return date is { } d ? new DateOnly(year, d.Month, d.Day) : null;
    }

    private static string Text((int Month, int Day)? date) =>
        date is { } d ? string.Create(CultureInfo.InvariantCulture, $"{d.Month:00}-{d.Day:00}") : "";
}
