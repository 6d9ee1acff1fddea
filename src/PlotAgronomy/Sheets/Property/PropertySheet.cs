using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>What several plots buy together, and what each of them costs by itself.</summary>
internal static class PropertySheet
{
    internal static FieldSheet Write(PropertyPlan property) =>
        new()
        {
            Title = $"{Amounts.Print(property.Plots.Length, 0)} plots, bought for together",
            Sections =
            [
                .. property.Cuts.IsEmpty ? [] : new[] { LeftOut(property) },
                Shopping(property),
                Plots(property),
                Work(property),
            ],
            Findings = [],
            Sources = [],
        };

    private static SheetSection LeftOut(PropertyPlan property)
    {
        var sheet = new SectionWriter("left-out", "Left out for the budget");
        sheet.Say("First goes what harms least, and of that what saves most; the others keep their rates.");
        sheet.Table(
            ["plot", "left out", "saves", "what it costs"],
            property.Cuts.Select(c => new SheetRow
            {
                Cells = [c.Plot.Plan.Plot.Name, c.What, property.Currency.Print(c.Saves), c.Loses],
            })
        );
        return sheet.Close();
    }

    private static SheetSection Shopping(PropertyPlan property)
    {
        var sheet = new SectionWriter("shopping", "Shopping for all plots");
        sheet.Table(
            ["what", "needed", "package", "each by itself", "together", "left over", "cost"],
            property.Purchases.Select(p => new SheetRow
            {
                Cells =
                [
                    p.Name,
                    SheetText.Weight(p.Needed),
                    p.Package.ToString(),
                    Count(p.Apart),
                    Count(p.Together),
                    SheetText.LeftOver(p.LeftOver),
                    property.Currency.Print(p.Cost),
                ],
            })
        );
        sheet.Say($"Total {property.Currency.Print(property.Cost)}; sharing saves {property.Currency.Print(property.Saved)}.");
        foreach (var few in property.Purchases.Where(p => p.Missing > 0))
        {
            sheet.Say($"There is too little {few.Name} for all plots: {Amounts.Print(few.Missing, 0)} packages are missing.");
        }

        return sheet.Close();
    }

    private static SheetSection Plots(PropertyPlan property)
    {
        var sheet = new SectionWriter("plots", "The plots");
        sheet.Table(
            ["plot", "area", "sown on", "bought by itself", "takes from the shared bags"],
            property.Shares.Select(s => new SheetRow
            {
                Cells =
                [
                    s.Plot.Plan.Plot.Name,
                    Amounts.Print(s.Plot.Plan.Plot.Area, "ac", 2),
                    s.Plot.Plan.PlantingDate is { } day ? SheetText.Date(day) : "not set",
                    property.Currency.Print(s.Alone),
                    string.Join("; ", s.Takes.Select(t => $"{SheetText.Weight(t.Mass)} of {t.Name}")),
                ],
            })
        );
        return sheet.Close();
    }

    private static SheetSection Work(PropertyPlan property)
    {
        var sheet = new SectionWriter("work", "The work by day");
        sheet.Table(
            ["day", "plot", "spread", "load"],
            property.Loads.Select(w => new SheetRow
            {
                Cells = [w.Day is { } day ? SheetText.Date(day) : "not set", w.Plot.Name, w.What, SheetText.Weight(w.Load)],
            })
        );
        return sheet.Close();
    }

    private static string Count(int? packages) => packages is { } count ? Amounts.Print(count, 0) : "loose";
}
