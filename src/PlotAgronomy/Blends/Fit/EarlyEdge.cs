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
        DateOnly[] opening =
        [
            .. windows
                .Where(w => w.Season == PlantingSeason.Fall && w.Rule == PlantingRule.Window)
                .Select(w => w.FirstDay(sown.Year))
                .OfType<DateOnly>()
                .Order(),
        ];
        int open = opening.Count(d => d <= sown);
        return kind.GrowingSeason == GrowingSeason.Cool && open > 0 && open * 2 < opening.Length
            ? FindingCatalog.Create(
                BlendCodes.DateEarlyEdge,
                ("day", sown.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
                ("kind", kind.ShortName),
                ("open", Amounts.Print(open, 0)),
                ("count", Amounts.Print(opening.Length, 0)),
                ("later", opening[open].ToString("MM-dd", CultureInfo.InvariantCulture))
            )
            : null;
    }
}
