using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Seeds;

/// <summary>Published and independently computed values.</summary>
public class SeedWorkedExamples
{
    private const string Pls = "Seeds/worked-pls.csv";
    private const string Density = "Seeds/worked-density.csv";
    private const string Germination = "Seeds/worked-germination.csv";

    private const string Counts = "Seeds/worked-counts.csv";

    public static TheoryData<string> CountIds => WorkedExamples.Ids(Counts);

    public static TheoryData<string> PlsIds => WorkedExamples.Ids(Pls);

    public static TheoryData<string> DensityIds => WorkedExamples.Ids(Density);

    public static TheoryData<string> GerminationIds => WorkedExamples.Ids(Germination);

    [Theory, MemberData(nameof(PlsIds))]
    public void Pure_live_seed(string id)
    {
        var row = WorkedExamples.Find(Pls, id);
        var analysis = SeedAnalysis.FromFractions(Percent(row, "pure_pct"), Percent(row, "germination_pct"), Percent(row, "hard_pct"), Percent(row, "dormant_pct"));
        var rule = row.Text("rule") switch
        {
            "total" => ViabilityRule.TotalViable,
            "hard" => ViabilityRule.GerminationAndHard,
            _ => ViabilityRule.GerminationOnly,
        };
        WorkedExamples.AssertMatches(row, row.Text("topic") switch
        {
            "part" => PureLiveSeed.PartOf(analysis, rule).Percent,
            "delivered" => PureLiveSeed.Delivered(BulkSeedRate.DrilledPoundsPerAcre(row.Number("amount")), analysis, rule).PoundsPerAcre,
            "bulk" => PureLiveSeed.BulkRate(PureLiveSeedRate.DrilledPoundsPerAcre(row.Number("amount")), analysis, rule).Bulk.PoundsPerAcre,
            "price" => (double)PureLiveSeed.PricePerLivingPound((decimal)row.Number("amount"), analysis, rule),
            "extra" => PureLiveSeed.ExtraToBuy(analysis, rule) * 100,
            _ => throw row.Problem("topic", "unknown"),
        });
    }

    /// <summary>The typical count of a kind against a publication the table does not take it from. Counts of one kind differ between
    /// lots by a tenth to a fifth, which is the tolerance (common practice).</summary>
    [Theory, MemberData(nameof(CountIds))]
    public void Seed_counts_against_other_publications(string id)
    {
        var row = WorkedExamples.Find(Counts, id);
        WorkedExamples.AssertMatches(row, KindCatalog.Standard.Find(row.Text("kind")).RequireSeedCount().SeedsPerPound);
    }

    [Theory, MemberData(nameof(DensityIds))]
    public void Seeds_on_the_ground(string id)
    {
        var row = WorkedExamples.Find(Density, id);
        double a = row.Number("a");
        WorkedExamples.AssertMatches(row, row.Text("topic") switch
        {
            "seeds_per_ft2" => SeedDensity.FromRate(PureLiveSeedRate.DrilledPoundsPerAcre(a), Count(row)).SeedsPerSquareFoot,
            "rate" => SeedDensity.FromSeedsPerSquareFoot(a).RateOf(Count(row), SowingMethod.Drilled).PoundsPerAcre,
            "stand" => PureLiveSeed.BulkRate(
                SeedDensity.FromSeedsPerAcre(a).DrilledRateAfterLoss(Percent(row, "b"), Count(row)),
                SeedAnalysis.FromFractions(Fraction.One, Fraction.FromPercent(95)), ViabilityRule.GerminationOnly).Bulk.PoundsPerAcre,
            "row_foot" => SeedDensity.FromSeedsPerAcre(a).InRows(Length.FromInches(row.Number("b"))).SeedsPerFoot,
            "per_acre" => SeedDensity.FromRows(RowDensity.FromSeedsPerFoot(a), Length.FromInches(row.Number("b"))).SeedsPerAcre,
            "plants" => SeedDensity.FromSeedsPerSquareFoot(a).PlantsLeft(Part(row, 0), Part(row, 1)).SeedsPerSquareFoot,
            "thousand_seed" => SeedDensity.FromSeedsPerSquareFoot(a).DrilledRateAfterLoss(Fraction.FromPercent(30), SeedCount.FromThousandSeedWeight(Mass.FromGrams(row.Number("b")))).PoundsPerAcre,
            "count" => SeedCount.FromWeighedSample((int)a, Mass.FromGrams(row.Number("b"))).SeedsPerPound,
            "empty" => SeedDensity.FromSeedsPerSquareFoot(a).EmptySquareFeet.Percent,
            _ => throw row.Problem("topic", "unknown"),
        });
    }

    [Theory, MemberData(nameof(GerminationIds))]
    public void Range_of_a_germination_test(string id)
    {
        var row = WorkedExamples.Find(Germination, id);
        var test = GerminationTest.FromCount(row.Integer("germinated"), row.Integer("seeds"));
        WorkedExamples.AssertMatches(row, row.Text("topic") switch
        {
            "exact_low" => test.Low.Percent,
            "exact_high" => test.High.Percent,
            "wilson_low" => test.WilsonLow.Percent,
            "wilson_high" => test.WilsonHigh.Percent,
            "standard_error" => test.StandardError * 100,
            _ => throw row.Problem("topic", "unknown"),
        });
    }

    private static SeedCount Count(CsvRow row) => SeedCount.FromSeedsPerPound(row.Number("seeds_per_lb"));

    private static Fraction Percent(CsvRow row, string column) => Fraction.FromPercent(row.Number(column));

    private static Fraction Part(CsvRow row, int index) =>
        Fraction.FromPercent(double.Parse(row.Text("b").Split(';')[index], System.Globalization.CultureInfo.InvariantCulture));
}
