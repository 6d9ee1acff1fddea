using PlotAgronomy.Fertilizers;
using PlotAgronomy.Land;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Sheets;

/// <summary>A plan built in code, solved, read as numbers and laid out as a sheet.</summary>
public class PlanDocExample
{
    [Fact]
    public void The_plan_of_the_README_runs() =>
        DocExample.AssertCurrent("README.md", "tests/PlotAgronomy.Tests/Sheets/PlanDocExample.cs", Run, block: 1);

    [Fact]
    public void A_plan_in_code_needs_at_most_25_lines_and_three_usings()
    {
        string[] code = DocExample.BlockOf("README.md", block: 1);
        Assert.InRange(code.Length, 1, 25);
        Assert.InRange(code.Count(l => l.StartsWith("using ", StringComparison.Ordinal)), 1, 3);
    }

    private static void Run(TextWriter output)
    {
        // begin example
        var clover = KindCatalog.Standard.Find("crimson clover");
        var tag = SeedAnalysis.FromFractions(Fraction.FromPercent(98.5), germination: Fraction.FromPercent(85));
        var lot = new SeedLot { Kind = clover, Label = "C-3", Analysis = tag };
        var pellets = LimingMaterial.FromLabel("lime pellets", LimingForm.Pelletized, LimeFigure.FromPoundsEqualToOneTon(2080));
        var plan = new PlotPlan
        {
            Plot = new Plot { Name = "Fern Bottom", Measured = PlotArea.FromRectangle(Length.FromFeet(182), Length.FromFeet(140)) },
            Report = new SoilReport { Laboratory = "state", WaterPh = WaterPh.FromValue(5.2), BufferPhs = [BufferPh.FromValue(6.2, SoilBuffer.Mehlich)] },
            PlantingDate = new DateOnly(2026, 9, 12),
            Method = PlantingMethod.TilledAndPacked,
            Kinds = [new PlannedKind { Share = KindShare.FromShare(clover, 1), Offer = Offer.InBags(lot, Mass.FromPounds(25), pricePerBag: 68) }],
            LimeMethod = Institution.NorthCarolina.LimeMethods[0],
            LimeOffers = [Offer.InBags(pellets, Mass.FromPounds(40), pricePerBag: 6.50m)],
            NutrientSystem = RecommendationSystem.NorthCarolina,
            Spreader = new PlannedSpreader { Name = "shoulder spreader", Swath = Length.FromFeet(14) },
            Currency = Currency.FromCode("USD"),
        };
        var answers = plan.Solve();
        var lime = answers.Lime.Value.Order.Value;
        output.WriteLine($"lime: {lime.Bags} bags, {lime.Cost} {plan.Currency}");
        output.WriteLine(FieldSheet.Of(answers).ToMarkdown().Split('\n')[0]);
        // end example
    }
}
