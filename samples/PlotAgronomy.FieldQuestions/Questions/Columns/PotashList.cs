using PlotAgronomy.Columns;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Plots;
using PlotAgronomy.Soil;

namespace PlotAgronomy.FieldQuestions.Columns;

/// <summary>An extension office in Ohio has six soils and no exchange capacity on the list, which the potash of corn hangs on:
/// first the capacity from what is printed, then the potash.</summary>
internal static class PotashList
{
    private static readonly double[] WaterPh = [5.9, 6.2, 6.7, 5.6, 6.0, 6.1];
    private static readonly double[] Buffer = [6.6, 6.7, 6.9, 6.4, 5.3, 6.6];
    private static readonly double[] Potassium = [88, 131, 104, 61, 95, -9];
    private static readonly double[] Magnesium = [142, 188, 201, 96, 120, 150];
    private static readonly double[] Calcium = [1010, 1340, 1620, 720, double.NaN, 1100];
    private static readonly double[] Sodium = [.. Enumerable.Repeat(double.NaN, 6)];

    internal static void Answer(TextWriter output)
    {
        int rows = Potassium.Length;
        var (capacity, potash) = (new double[rows], new double[rows]);
        var (summed, answered) = (new RowStatus[rows], new RowStatus[rows]);
        var (whys, reasons) = (new ulong[rows], new ulong[rows]);
        var sum = ExchangeCapacityColumn.ByTerm(AcidityTerm.MidwestLaboratory, SoilBuffer.Smp);
        sum.Capacities(Potassium, Magnesium, Calcium, Sodium, Buffer, WaterPh, capacity, summed, whys);

        PlotSoil soil = new SoilReport { Laboratory = "an office of the Maumee", SoilClass = SoilClass.Mineral };
        var corn = CropUse.CarriedOff(CropRow.Corn, CropYield.FromBushelsPerAcre(110));
        var need = NeedColumn.ForPotash(
            RecommendationSystem.Find("TS-2020"), corn, Extractant.Mehlich3, SoilTestUnit.PartsPerMillion, soil);
        need.Rates(Potassium, capacity, potash, answered, reasons);
        output.WriteLine($"{need}, exchange capacity by {sum}:");
        for (int row = 0; row < rows; row++)
        {
            output.WriteLine($"soil {Amounts.Print(row + 1, 0)}: capacity {Print(capacity[row], "meq/100 g", 1)}, potash "
                + $"{Print(potash[row], "lb/ac", 0)}");
            output.Warn(sum.RowFindings.In(whys[row]).Concat(need.RowFindings.In(reasons[row])));
        }

        output.Warn(need.Findings);
    }

    private static string Print(double number, string unit, int decimals) =>
        double.IsNaN(number) ? "unknown" : $"{Amounts.Print(number, decimals)} {unit}";
}
