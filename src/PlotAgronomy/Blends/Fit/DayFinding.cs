using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>What is to be said of one kind on a day of sowing.</summary>
internal static class DayFinding
{
    /// <summary>The caution; null on a day that is in time, or where no dates were read.</summary>
    internal static Finding? Of(CropKind kind, DateOnly day, ImmutableArray<PlantingWindow> windows)
    {
        if (SowingDay.Of(day, windows) is not { Code: { } code } off)
        {
            return EarlyEdge.For(kind, windows, day);
        }

        string dated = day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        string published = string.Join("; ", windows.Select(w => w.ToString()).Distinct());
        return code == BlendCodes.OutOfSeason
            ? FindingCatalog.Create(code, ("day", dated), ("kind", kind.ShortName), ("dates", published))
            : FindingCatalog.Create(
                code,
                ("day", dated),
                ("kind", kind.ShortName),
                ("days", Amounts.Print(off.Days, 0)),
                ("dates", published)
            );
    }
}
