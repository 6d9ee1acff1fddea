using PlotAgronomy.Columns;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Plots;

namespace PlotAgronomy.FieldQuestions.Columns;

/// <summary>A game club's seven plots as North Carolina's laboratory listed them: water pH, buffer pH, phosphorus index. One
/// cell is blank, one lost its point.</summary>
internal static class IndexList
{
    private static readonly string[] Plots = ["orchard", "creek", "ridge", "mill", "fern", "gate", "pond"];
    private static readonly double[] WaterPh = [5.1, 5.8, 6.4, 54, 5.4, 5.6, 5.9];
    private static readonly double[] Buffer = [6.08, 6.33, 6.45, 6.15, double.NaN, 6.25, 6.38];
    private static readonly double[] Index = [12, 38, 71, 24, 55, double.NaN, 210];

    internal static void Answer(TextWriter output)
    {
        int rows = Plots.Length;
        var (lime, low, high) = (new double[rows], new double[rows], new double[rows]);
        var (status, asked, rated) = (new RowStatus[rows], new RowStatus[rows], new RowStatus[rows]);
        var (flags, whys, places) = (new ulong[rows], new ulong[rows], new byte[rows]);
        var column = LimeColumn.ForMethod(LimeMethod.NorthCarolina, targetPh: 6.0, SoilClass.Mineral);
        column.Rates(WaterPh, Buffer, lime, status, flags);
        column.Published(lime, lime);

        PlotSoil soil = new SoilReport { Laboratory = "North Carolina", SoilClass = SoilClass.Mineral };
        var crop = CropUse.Browsed(CropRow.DeerTurkeyPlot);
        var need = NeedColumn.ForPhosphate(
            RecommendationSystem.NorthCarolina, crop, Extractant.Mehlich3, SoilTestUnit.NorthCarolinaIndex, soil);
        need.Ranges(Index, [], low, high, asked, whys);
        var rating = RatingColumn.ForSystem(
            RatingSystem.NorthCarolina, SoilAnalyte.Phosphorus, Extractant.Mehlich3, SoilTestUnit.NorthCarolinaIndex, soil);
        rating.Places(Index, places, rated);
        for (int row = 0; row < rows; row++)
        {
            string stands = places[row] == 0 ? "not rated" : rating.Scale!.Classes[places[row] - 1].Name;
            output.WriteLine($"{Plots[row]}: lime {Tons(lime[row])}; phosphorus {stands}, phosphate "
                + $"{Range(low[row], high[row])}");
            output.Warn(column.RowFindings.In(flags[row]).Concat(need.RowFindings.In(whys[row])));
        }

        output.WriteLine($"{status.Count(s => s is RowStatus.Answered or RowStatus.NoneNeeded)} of {rows} have lime, "
            + $"{asked.Count(s => s is RowStatus.Answered or RowStatus.NoneNeeded)} phosphate. For all of them:");
        output.Warn(column.Findings.Concat(need.Findings));
    }

    private static string Tons(double pounds) => double.IsNaN(pounds) ? "unknown" : $"{Amounts.Print(pounds / 2000, 1)} ton/ac";

    private static string Range(double low, double high) =>
        double.IsNaN(low) ? "unknown"
        : high <= 0 ? "none"
        : $"{Amounts.Print(low, 0)} to {Amounts.Print(high, 0)} lb/ac";
}
