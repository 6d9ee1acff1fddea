using PlotAgronomy.Liming;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Liming;

/// <summary>The sums people look for, as the page shows them.</summary>
public class LimingSumsDocExample
{
    [Fact]
    public void The_sums_of_the_page_are_what_the_code_writes() =>
        DocExample.AssertCurrent("docs/liming.md", "tests/PlotAgronomy.Tests/Liming/LimingSumsDocExample.cs", Run, block: 1);

    internal static void Run(TextWriter output)
    {
        // begin example
        // A laboratory that prints the lime buffer capacity, read after 30 minutes.
        var capacity = LimeBufferCapacity.FromThirtyMinutes(250);
        output.WriteLine($"250 after 30 minutes are {capacity}; {LimeBufferCapacity.AtEquilibrium(400)} was waited for");
        var report = new SoilReport
        {
            Laboratory = "an invented laboratory",
            WaterPh = WaterPh.FromValue(5.3),
            LimeBufferCapacity = capacity,
        };
        var need = LimeMethod.Find("georgia-lime-buffer-capacity").NeedFor(report, targetPh: 6.5);
        output.WriteLine($"{need.Rate}, or {Amounts.Print(need.Rate!.OfBasis.TonnesPerHectare, 2)} t/ha");

        // What pure compounds neutralize, and a label that states calcium and magnesium alone.
        var calcite = LimingCompound.Calcite;
        output.WriteLine($"{calcite}: {Amounts.Print(calcite.CcePercent, 1)} %");
        double cce = LimingCompound.CcePercentFromElements(Fraction.FromPercent(21), Fraction.FromPercent(11));
        output.WriteLine($"21 % Ca and 11 % Mg: {Amounts.Print(cce, 1)} %");

        // Thirty bags went on in March: when does it show?
        var spread = LimeApplication.FromBags(30, Mass.FromPounds(40), LimingMaterial.PureCarbonate, new DateOnly(2026, 3, 1));
        var outlook = LimeOutlook.For(new LimeOutlookRequest
        {
            Soil = report,
            Rate = need.Rate!,
            Material = spread.Material,
            LimedOn = spread.On!.Value,
            PlantingOn = new DateOnly(2026, 9, 15),
        });
        output.WriteLine($"{Amounts.Print(spread.Mass, "lb", 0)} show from {outlook.StartsOn:yyyy-MM-dd}, about full effect on {outlook.FullEffectOn:yyyy-MM-dd}");
        // end example
    }
}
