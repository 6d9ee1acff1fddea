using System.Collections.Immutable;
using PlotAgronomy.Seeds;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Calendar;

/// <summary>The dates of all kinds of a sowing: the window that suits them, and which drop out as the day slips.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SowingDates
{
    private SowingDates(DateOnly sowOn, ImmutableArray<KindDates> kinds) => (SowOn, Kinds) = (sowOn, kinds);

    /// <summary>Gets the day of sowing.</summary>
    public DateOnly SowOn { get; }

    /// <summary>Gets the kinds, in the order of the plan.</summary>
    public ImmutableArray<KindDates> Kinds { get; }

    /// <summary>Gets the kinds with a last sensible day, the one that drops out first leading.</summary>
    public ImmutableArray<KindDates> DropOut => [.. Kinds.Where(k => k.LastSensible is not null).OrderBy(k => k.LastSensible)];

    /// <summary>Gets the kinds whose printed dates do not allow the day.</summary>
    public ImmutableArray<KindDates> OutOfSeason => [.. Kinds.Where(k => k.IsInSeason == false)];

    /// <summary>Gets the first day that suits every kind whose printed dates allow the planned one; null where no dates
    /// do.</summary>
    public DateOnly? From => InSeason.Select(k => k.Allowing.Min(w => w.FirstDay(SowOn.Year))).Max();

    /// <summary>Gets the last day that suits every kind whose printed dates allow the planned one; null where no dates
    /// do.</summary>
    public DateOnly? To => InSeason.Select(k => k.LastPrinted).Min();

    private IEnumerable<KindDates> InSeason => Kinds.Where(k => k.IsInSeason == true);

    /// <summary>Works the dates of a sowing out.</summary>
    /// <param name="kinds">Kinds, at least one.</param>
    /// <param name="sowOn">Day of sowing.</param>
    /// <param name="region">Region of the plot, or null.</param>
    /// <param name="frost">Dates of the first freeze, or null.</param>
    /// <returns>The dates.</returns>
    /// <exception cref="ArgumentException">No kind.</exception>
    public static SowingDates Of(
        IReadOnlyList<CropKind> kinds,
        DateOnly sowOn,
        PlantingRegion? region = null,
        FrostDates? frost = null
    )
    {
        Guard.NotEmpty(kinds);
        return new(sowOn, [.. kinds.Select(k => KindDates.Of(k, sowOn, region, frost))]);
    }

    /// <summary>The kinds that drop out between two days: their last sensible day is the first of them or lies between.</summary>
    internal IEnumerable<KindDates> DroppingOut(DateOnly from, DateOnly to) =>
        Kinds.Where(k => k.LastSensible is { } last && last >= from && last < to);

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("; ", Kinds);
}
