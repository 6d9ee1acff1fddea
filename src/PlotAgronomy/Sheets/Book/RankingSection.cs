using PlotAgronomy.Records;

namespace PlotAgronomy.Sheets;

/// <summary>Kinds and blends of the whole book, best first, and how many more observations would tell them from chance.</summary>
internal static class RankingSection
{
    /// <summary>Nothing where there is nothing to hold against each other.</summary>
    internal static IEnumerable<SheetSection> Of(PlotHistory history)
    {
        if (history.Ranking.Kinds.Length < 2 && history.Eaten.Kinds.Length < 2)
        {
            yield break;
        }

        var sheet = new SectionWriter("ranking", "Kinds and blends, best first");
        sheet.Say("More: further counts, one a plot and year, that would tell a kind from the mean of all.");
        Table(sheet, "comes up", history.Ranking);
        Table(sheet, "eaten", history.Eaten);
        yield return sheet.Close();
    }

    private static void Table(SectionWriter sheet, string what, KindRanking ranking)
    {
        if (ranking.Kinds.Length > 1)
        {
            sheet.Table(
                ["kind", what, "seen", "more"],
                ranking.Kinds.Select(k => new SheetRow
                {
                    Cells = [k.Name, Percent(k.Shrunk), Amounts.Print(k.Observations, 0), k.More],
                })
            );
        }
    }

    private static string Percent(double part) => $"{Amounts.Print(part * 100, 0)} %";
}
