using System.Globalization;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>A fall sowing of a cool-season kind in the heat of late summer, which the fewer of the publications allow.</summary>
internal static class EarlyEdge
{
    /// <summary>The caution; null where at least half of the dated publications are open, or none is.</summary>
    internal static Finding? For(CropKind kind, IEnumerable<PlantingWindow> windows, DateOnly sown)
    {
        var opening = new List<int>();
        foreach (var window in windows.Where(w => w.Season == PlantingSeason.Fall && w.Rule == PlantingRule.Window))
        {
            if (window.FirstDay(sown.Year) is { } day)
            {
                opening.Add(day.DayNumber);
            }
        }

        opening.Sort();
        int open = opening.FindAll(day => day <= sown.DayNumber).Count;
        return kind.GrowingSeason == GrowingSeason.Cool && open > 0 && open * 2 < opening.Count
            ? FindingCatalog.Create(
                BlendCodes.DateEarlyEdge,
                ("day", sown.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
                ("kind", kind.ShortName),
                ("open", Amounts.Print(open, 0)),
                ("count", Amounts.Print(opening.Count, 0)),
                ("later", DateOnly.FromDayNumber(opening[open]).ToString("MM-dd", CultureInfo.InvariantCulture))
            )
            : null;
    }
}
