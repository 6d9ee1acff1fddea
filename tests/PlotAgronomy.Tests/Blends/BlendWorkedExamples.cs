using PlotAgronomy.Blends;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Blends;

/// <summary>Published and hand-worked blends, each row its own check.</summary>
public class BlendWorkedExamples
{
    private const string File = "Blends/worked-blends.csv";

    public static TheoryData<string> BlendRows => WorkedExamples.Ids(File, "blend");

    public static TheoryData<string> DiversityRows => WorkedExamples.Ids(File, "diversity");

    public static TheoryData<string> BatchRows => WorkedExamples.Ids(File, "batch");

    public static TheoryData<string> EmptyRows => WorkedExamples.Ids(File, "empty");

    public static TheoryData<string> MixedRows => WorkedExamples.Ids(File, "mixed");

    public static TheoryData<string> PerPoundRows => WorkedExamples.Ids(File, "per-pound");

    public static TheoryData<string> CostRows => WorkedExamples.Ids(File, "cost");

    [Theory, MemberData(nameof(BlendRows))]
    public void A_blend_has_the_printed_amounts(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var blend = SampleBlends.Find(row.Text("blend"));
        double actual = row.TextOrNull("item") is { } kind
            ? OfPart(blend, blend.Parts.Single(p => p.Kind.Id == kind), row.Text("quantity"))
            : OfWhole(blend, row.Text("quantity"));
        WorkedExamples.AssertMatches(row, actual);
    }

    [Theory, MemberData(nameof(DiversityRows))]
    public void Diversity_depends_on_what_is_counted(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var measure = row.Text("item") switch { "bulk" => BlendMeasure.BulkWeight, "seeds" => BlendMeasure.LiveSeeds, _ => BlendMeasure.Stand };
        var diversity = Diversity.For(SampleBlends.Find(row.Text("blend")), measure);
        WorkedExamples.AssertMatches(row, row.Text("quantity") switch
        {
            "shannon" => diversity.Shannon,
            "evenness" => diversity.Evenness,
            "simpson" => diversity.Simpson,
            _ => diversity.EffectiveKinds,
        });
    }

    [Theory, MemberData(nameof(BatchRows))]
    public void A_small_batch_holds_a_chancy_count_of_large_seeds(string id)
    {
        var row = WorkedExamples.Find(File, id);
        double[] inputs = [.. row.Text("item").Split(';').Select(t => double.Parse(t, System.Globalization.CultureInfo.InvariantCulture))];
        var counted = SampleBlends.Drilled("austrian-winter-pea", 50, inputs[2]);
        var rest = SampleBlends.Drilled("oats-spring", 90, 16_000);
        var blend = Blend.FromWeightShares(ApplicationRate.FromPoundsPerAcre(60), (counted, Fraction.FromPercent(inputs[0])), (rest, Fraction.FromPercent(100 - inputs[0])));
        var spread = BatchSpread.For(blend, BulkSeedMass.FromPounds(inputs[1])).Kinds[0];
        WorkedExamples.AssertMatches(row, row.Text("quantity") switch
        {
            "count" => spread.LiveSeeds,
            "variation" => spread.Variation * 100,
            _ => spread.NinetyFivePercentRange * 100,
        });
    }

    [Theory, MemberData(nameof(EmptyRows))]
    public void Scattered_seed_leaves_square_feet_empty(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var blend = Blend.FromSeedShares(row.Number("item"), (SampleBlends.Drilled("oats-spring", 90, 16_000), Fraction.One));
        WorkedExamples.AssertMatches(row, blend.EmptySquareFeet.Percent);
    }

    [Theory, MemberData(nameof(MixedRows))]
    public void Mixture_rates_are_parts_of_the_rates_alone(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var rates = Rates(row.Text("item"));
        var range = Range(rates, "alone");
        var component = BlendComponent.FromKind(SampleBlends.Unlisted("Listed", rates.Number("seeds_per_lb")), range.Middle) with { FullRange = range };
        var blend = Blend.FromLiveRates((component, Range(rates, "mixed").Middle));
        WorkedExamples.AssertMatches(row, blend.StandTotal.Chosen);
    }

    [Theory, MemberData(nameof(PerPoundRows))]
    public void A_pound_an_acre_puts_seeds_on_a_square_foot(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var kind = SampleBlends.Unlisted("Listed", Rates(row.Text("item")).Number("seeds_per_lb"));
        var blend = Blend.FromLiveRates((BlendComponent.FromKind(kind, PureLiveSeedRate.DrilledPoundsPerAcre(10)), PureLiveSeedRate.DrilledPoundsPerAcre(1)));
        WorkedExamples.AssertMatches(row, blend.LiveSeedsPerSquareFoot);
    }

    [Theory, MemberData(nameof(CostRows))]
    public void A_blend_costs_the_printed_price(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var blend = Blend.FromLiveRates([.. SampleBlends.Sandyland().Parts.Select(p => (Priced(p.Component), p.LiveRate))]);
        var order = BagOrder.For(blend, Area.FromAcres(1));
        decimal cost = row.TextOrNull("item") is { } kind ? order.Lines.Single(l => l.Component.Kind.Id == kind).Cost!.Value : order.Cost!.Value;
        WorkedExamples.AssertMatches(row, (double)cost);
    }

    private static BlendComponent Priced(BlendComponent component) => component with
    {
        Offer = Offer.ByThePound(
            new SeedLot
            {
                Label = component.Kind.Id,
                Kind = component.Kind,
                Analysis = SeedAnalysis.FromFractions(Fraction.One, Fraction.One),
            },
            (decimal)WorkedExamples.Find(File, $"cost-{component.Kind.Id}").Number("quantity")),
    };

    private static CsvRow Rates(string id) => WorkedExamples.Find("Blends/alone-and-mixed-rates.csv", id);

    private static PureLiveSeedRateRange Range(CsvRow row, string way) => PureLiveSeedRateRange.Between(
        PureLiveSeedRate.DrilledPoundsPerAcre(row.Number($"{way}_low_lb_per_ac")), PureLiveSeedRate.DrilledPoundsPerAcre(row.Number($"{way}_high_lb_per_ac")));

    private static double OfPart(Blend blend, BlendPart part, string quantity) => quantity switch
    {
        "live-rate" => part.LiveRate.PoundsPerAcre,
        "bulk-rate" => part.BulkRate.PoundsPerAcre,
        "pure-live-percent" => part.LiveRate.PoundsPerAcre / part.BulkRate.PoundsPerAcre * 100,
        "batch-50" => blend.WeighBatch(BulkSeedMass.FromPounds(50)).Lines.Single(l => l.Component.Kind.Id == part.Kind.Id).Weight.Pounds,
        "bulk-percent" => part.ShareOfBulkWeight.Percent,
        "live-percent" => part.ShareOfLiveWeight.Percent,
        "tag-percent" => part.PureSeedOnTag.Percent,
        "seeds" => part.LiveSeedsPerSquareFoot,
        "seed-percent" => part.ShareOfLiveSeeds.Percent,
        "stand-percent" => part.ShareOfStand.Percent,
        "stand-share" => part.ShareOfFullStand.Chosen,
        _ => throw new ArgumentException(quantity),
    };

    private static double OfWhole(Blend blend, string quantity) => quantity switch
    {
        "live-rate" => blend.LiveRate.PoundsPerAcre,
        "bulk-rate" => blend.BulkRate.PoundsPerAcre,
        "pure-live-percent" => blend.PureLiveSeed.Percent,
        "tag-percent" => blend.Parts.Sum(p => p.PureSeedOnTag.Percent),
        "seeds" => blend.LiveSeedsPerSquareFoot,
        "stand-total" => blend.StandTotal.Chosen,
        "batch-acres" => AcresOf(blend.WeighBatch(BulkSeedMass.FromPounds(50))),
        "per-1000-ft2" => blend.BulkRate.PoundsPerThousandSquareFeet,
        "rate-at-one" => blend.AtStandTotal(1).BulkRate.PoundsPerAcre,
        _ => throw new ArgumentException(quantity),
    };

    private static double AcresOf(BlendBatch batch)
    {
        Area area = batch.Area;
        return area.Acres;
    }
}
