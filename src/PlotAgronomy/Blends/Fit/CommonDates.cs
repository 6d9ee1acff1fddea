using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>Days of the year on which the published planting dates of a blend's kinds allow all of them.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class CommonDates
{
    /// <summary>A year without a leap day: a window that ends on February 28 ends there.</summary>
    private const int PlainYear = 2026;

    private CommonDates(Blend blend, PlantingRegion region)
    {
        Region = region;
        Windows = blend.Parts.Select(p => p.Kind).ToImmutableDictionary(k => k.Id, k => PlantingWindow.Published(k, region));
        Unknown = [.. blend.Parts.Select(p => p.Kind).Where(k => Windows[k.Id].IsEmpty)];
        Ranges = RangesOf([.. Windows.Values.Where(w => !w.IsEmpty)]);
    }

    /// <summary>Gets the region.</summary>
    public PlantingRegion Region { get; }

    /// <summary>Gets the kinds for which no dates were read; they do not count.</summary>
    public ImmutableArray<CropKind> Unknown { get; }

    /// <summary>Gets the stretches of days, of a plain year, that some publication allows for each kind; none when they have no
    /// day in common.</summary>
    public ImmutableArray<(DateOnly From, DateOnly To)> Ranges { get; }

    internal ImmutableDictionary<string, ImmutableArray<PlantingWindow>> Windows { get; }

    /// <summary>Finds the days in common.</summary>
    /// <param name="blend">Blend.</param>
    /// <param name="region">Region.</param>
    /// <returns>The days.</returns>
    public static CommonDates For(Blend blend, PlantingRegion region)
    {
        ArgumentNullException.ThrowIfNull(blend);
        ArgumentNullException.ThrowIfNull(region);
        return new(blend, region);
    }

    private static ImmutableArray<(DateOnly, DateOnly)> RangesOf(ImmutableArray<ImmutableArray<PlantingWindow>> kinds)
    {
        var ranges = ImmutableArray.CreateBuilder<(DateOnly, DateOnly)>();
        DateOnly? start = null;
        var end = new DateOnly(PlainYear, 12, 31);
        for (var day = new DateOnly(PlainYear, 1, 1); day <= end; day = day.AddDays(1))
        {
            bool allowed = !kinds.IsEmpty && EachAllows(kinds, day);
            start = allowed ? start ?? day : start;
            if (start is { } from && (!allowed || day == end))
            {
                ranges.Add((from, allowed ? day : day.AddDays(-1)));
                start = null;
            }
        }

        return ranges.ToImmutable();
    }

    /// <summary>Whether some publication allows the day for every kind.</summary>
    private static bool EachAllows(ImmutableArray<ImmutableArray<PlantingWindow>> kinds, DateOnly day)
    {
        foreach (var windows in kinds)
        {
            if (!AnyAllows(windows, day))
            {
                return false;
            }
        }

        return true;
    }

    private static bool AnyAllows(ImmutableArray<PlantingWindow> windows, DateOnly day)
    {
        foreach (var window in windows)
        {
            if (window.Allows(day))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The region and its common days.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        Ranges.IsEmpty ? $"{Region}: no common day" : $"{Region}: {string.Join(", ", Ranges.Select(Printed))}";

    private static string Printed((DateOnly From, DateOnly To) range) =>
        FormattableString.Invariant($"{range.From:MM-dd} to {range.To:MM-dd}");
}
