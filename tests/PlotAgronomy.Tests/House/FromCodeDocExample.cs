using PlotAgronomy.Blends;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Seeds;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.House;

/// <summary>The sums that no plan asks for, each called once.</summary>
public class FromCodeDocExample
{
    [Fact]
    public void The_page_shows_what_the_code_does() =>
        DocExample.AssertCurrent("docs/from-code.md", "tests/PlotAgronomy.Tests/House/FromCodeDocExample.cs", Run);

    private static void Run(TextWriter output)
    {
        // begin example
        // Which kinds at all, from the lots of a shelf? Three kinds, food from early to mid fall.
        string[] names = ["crimson clover", "winter oats", "cereal rye", "chicory", "berseem clover", "crimson clover"];
        Offer<SeedLot>[] shelf = [.. names.Select((name, i) => Offer.ByThePound(new SeedLot
        {
            Label = $"{i + 1}",
            Kind = KindCatalog.Standard.Find(name),
            Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(98), germination: Fraction.FromPercent(85)),
        }, pricePerPound: 1 + i))];
        RecipeProposal proposal = RecipeProposal.Find(
            new RecipeRequest { Area = Area.FromAcres(0.5), Method = SowingMethod.Broadcast, Seasons = [SeasonOfUse.EarlyFall, SeasonOfUse.MidFall], MinimumKinds = 3 },
            shelf);
        Recipe? recipe = proposal.Recipe;
        output.WriteLine(recipe is null ? "no recipe" : string.Join("; ", recipe.Blend.Parts.Select(p => $"{p.Kind.ShortName} {Amounts.Print(p.ShareOfFullStand.Chosen, 2)}")));
        foreach (ExcludedLot lot in proposal.Excluded)
        {
            output.WriteLine($"left out: {lot}");
        }

        // Is a retest of 78 still the 85 of the tag? And a home test of 50 seeds of which 30 came up?
        GerminationTolerance retest = GerminationTolerance.Compare(Fraction.FromPercent(85), Fraction.FromPercent(78));
        HomeTestVerdict home = HomeTestVerdict.Compare(shelf[0].Item.Analysis, GerminationTest.FromCount(germinated: 30, seeds: 50));
        output.WriteLine($"within tolerance: {retest.IsWithin}; sow {Amounts.Print(home.RateFactor, 2)} times the rate");

        // A grade blended from straights, and litter for 60 lb of phosphate.
        GradeMix grade = GradeMix.For(
            FertilizerAnalysis.FromGrade("10-10-10"),
            Mass.FromPounds(50),
            Offer.InBags(FertilizerProduct.Create("urea", FertilizerAnalysis.FromGrade("46-0-0")), Mass.FromPounds(50), 28),
            Offer.InBags(FertilizerProduct.Create("triple superphosphate", FertilizerAnalysis.FromGrade("0-46-0")), Mass.FromPounds(50), 34),
            Offer.InBags(FertilizerProduct.Create("potash", FertilizerAnalysis.FromGrade("0-0-60")), Mass.FromPounds(50), 30));
        ManureRate litter = Manure.Analyzed("litter", nitrogen: 60, phosphate: 55, potash: 45)
            .ForPhosphate(
                ApplicationRate.FromPoundsPerAcre(60),
                PhosphateAvailability.All,
                NitrogenAvailability.FromFraction(Fraction.One));
        output.WriteLine(string.Join("; ", grade.Lines.Select(l => $"{Amounts.Print(l.Mass, "lb", 1)} of {l.Material.Name}")));
        output.WriteLine($"{Amounts.Print(litter.RichLot.Rate, "ton/ac", 2)} of litter");

        // A ton and a half an acre is due on half an acre, and ten bags lie on it already.
        LimeRate due = LimeRate.FromBasis(ApplicationRate.FromShortTonsPerAcre(1.5), 6.5, Length.FromInches(6), LimeBasis.GroundLimestone, Institution.NorthCarolina);
        LimeRate none = LimeRate.FromBasis(ApplicationRate.Zero, due.TargetPh, due.Depth, due.Basis, due.Institution);
        LimeBalance balance = LimeBalance.For(due, Area.FromAcres(0.5), [LimeApplication.FromBags(10, Mass.FromPounds(40), LimingMaterial.FromBasis(due.Basis))]);
        LimeByTest byTest = LimeByTest.Compare(
            [LimePlotNeed.FromRate("north", Area.FromAcres(0.5), due), LimePlotNeed.FromRate("south", Area.FromAcres(0.5), none)],
            due,
            LimingMaterial.FromBasis(due.Basis));
        FineLimeAllowance fine = FineLimeAllowance.For(due);
        output.WriteLine($"owed {Amounts.Print(balance.StillOwed, "lb", 0)}; a blanket wastes {Amounts.Print(byTest.Wasted, "lb", 0)}; less of fine lime: {fine.Low is not null}");

        // Trays across one pass: how wide may the passes be, and how even is it then?
        var trays = SpreadPattern.Triangle(Length.FromFeet(16), Length.FromFeet(16));
        SwathAdvice advice = SwathAdvice.For(trays, DrivingMethod.BackAndForth);
        var swath = advice.Recommended!.Value;
        OverlappedPattern even = OverlappedPattern.For(trays, swath, DrivingMethod.BackAndForth);
        HalfRateComparison half = HalfRateComparison.For(trays, swath, DrivingMethod.BackAndForth);
        FirstPassEffect first = FirstPassEffect.For(trays, swath, FirstPassPlacement.OnEdge);
        output.WriteLine($"swath {Amounts.Print(swath, "ft", 1)}, CV {Amounts.Print(even.SampleCvPercent, 1)} %; twice at half rate is more even: {half.HalfSwathIsMoreEven}; lost past the edge: {Amounts.Print(first.LostPart, 2)}");

        // Outlets of a drill, a printed dial, and sand to carry a few pounds of small seed.
        OutletCheck outlets = OutletCheck.For([Mass.FromOunces(4.0), Mass.FromOunces(4.1), Mass.FromOunces(3.5)]);
        PrintedDial dial = PrintedDial.Compare(ApplicationRate.FromPoundsPerAcre(8), ApplicationRate.FromPoundsPerAcre(11));
        CarrierMix sand = CarrierMix.ForParts(ApplicationRate.FromPoundsPerAcre(5), partsByWeight: 4, Carrier.DrySand);
        output.WriteLine($"off the mean {string.Join(", ", outlets.OffMeanPercent.Select(p => Amounts.Print(p, 0)))} %; the dial claims {Amounts.Print(dial.ClaimedToWanted, 2)} times; spread {Amounts.Print(sand.BlendRate)}");
        // end example
    }
}
