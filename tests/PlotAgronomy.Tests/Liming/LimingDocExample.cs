using PlotAgronomy.Liming;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Liming;

public class LimingDocExample
{
    [Fact]
    public void The_example_of_the_page_runs() =>
        DocExample.AssertCurrent("docs/liming.md", "tests/PlotAgronomy.Tests/Liming/LimingDocExample.cs", Run);

    private static void Run(TextWriter output)
    {
        // begin example
        var report = new SoilReport
        {
            Laboratory = "an invented laboratory",
            WaterPh = WaterPh.FromValue(5.2),
            BufferPhs = [BufferPh.FromValue(6.4, SoilBuffer.Sikora)],
        };

        var need = LimeMethod.Find("oregon-2025-sikora").NeedFor(report, targetPh: 6.4);
        output.WriteLine(need.Rate);
        output.WriteLine($"if the reading is off by 0.1: {Amounts.Print(need.Lowest!.OfBasis, "ton/ac", 1)} to {Amounts.Print(need.Highest!.OfBasis, "ton/ac", 1)}");

        var pellets = LimingMaterial.FromLabel("pelletized lime", LimingForm.Pelletized, LimeFigure.FromPercent(LimeIndex.OregonScore, 92));
        var order = LimeOrder.For(new LimeOrderRequest
        {
            Rate = need.Rate!,
            Material = pellets,
            Area = Area.FromAcres(0.25),
            WorkedDepth = Length.FromInches(4),
            Package = Package.FromWeight(Mass.FromPounds(40)),
        });
        foreach (var line in order.ShowWork())
        {
            output.WriteLine(line);
        }

        var comparison = LimeMethodComparison.For(report, targetPh: 6.5, Length.FromInches(6), includeFromMemory: true);
        foreach (var answer in comparison.Answers)
        {
            string tons = answer.Common is { } rate ? Amounts.Print(rate, "ton/ac", 1) : "no answer";
            output.WriteLine($"{answer.Method}, to pH {Amounts.Print(answer.TargetPh, 1)}: {tons}");
        }
        // end example
    }
}
