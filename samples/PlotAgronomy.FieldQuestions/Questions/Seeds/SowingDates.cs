using PlotAgronomy.Seeds;

namespace PlotAgronomy.FieldQuestions.Seeds;

/// <summary>A landowner near the Gulf wants one day of September for four kinds.</summary>
internal static class SowingDates
{
    internal static void Answer(TextWriter output)
    {
        var day = new DateOnly(2026, 9, 26);
        var region = PlantingRegion.Find("South");
        output.WriteLine($"{region.Name}: {region.Covers}.");
        string[] bags = ["crimson clover", "winter oats", "purple top turnip", "alsike clover"];
        foreach (var kind in bags.Select(KindCatalog.Standard.Find))
        {
            var read = PlantingWindow.Published(kind, region);
            var windows = read.IsEmpty ? PlantingWindow.FromMemory(kind, region) : read;
            string verdict = windows.Any(w => w.Allows(day)) ? "sow that day" : "not that day";
            output.WriteLine($"{kind.ShortName}: {verdict} ({string.Join("; ", windows)})");
            output.Warn(windows.SelectMany(w => w.Findings).DistinctBy(f => f.Text));
        }
    }
}
