using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>How far what is there goes, and what runs out first.</summary>
internal static class UseUpSheet
{
    internal static FieldSheet Write(UseUp counted)
    {
        string plot = Amounts.Print(counted.Plan.Plot.Area, "ac", 2);
        var seed = new SectionWriter("use-up-seed", "Seed that is there");
        if (counted.RunsOutFirst is { } first)
        {
            seed.Say(
                $"At the wanted shares it plants {Amounts.Print(first.Ground, "ac", 3)} of {plot}; then {first.Name} runs out."
            );
            seed.Table(["kind", "there", "bulk rate", "plants", "left then", $"short for {plot}"], counted.Seeds.Select(Row));
        }

        var others = new SectionWriter("use-up-others", "Lime and fertilizer that is there");
        if (!counted.Others.IsEmpty)
        {
            others.Say("Each alone, at the rate that meets all it is needed for.");
            others.Table(
                ["material", "there", "rate", "does", $"left after {plot}", $"short for {plot}"],
                counted.Others.Select(Row)
            );
        }

        return SheetEnding.Close(
            $"{counted.Plan.Plot.Name}: what is there, and how far it goes",
            [.. counted.Seeds.IsEmpty ? [] : new[] { seed.Close() }, .. counted.Others.IsEmpty ? [] : new[] { others.Close() }],
            []
        );
    }

    private static SheetRow Row(UseUpLine line) =>
        new()
        {
            Cells =
            [
                line.Name,
                Amounts.Print(line.There, "lb", 2),
                Amounts.Print(line.Rate, "lb/ac", 2),
                Amounts.Print(line.Ground, "ac", 3),
                Amounts.Print(line.Left, "lb", 2),
                Amounts.Print(line.ShortForPlot, "lb", 2),
            ],
        };
}
