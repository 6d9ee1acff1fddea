using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>Removal, nitrogen and the secondary nutrients against published figures and hand algebra.</summary>
public class NeedWorkedExamples
{
    private const string File = "Nutrients/worked-need.csv";

    public static TheoryData<string> Removals => WorkedExamples.Ids(File, "removal");

    public static TheoryData<string> Nitrogens => WorkedExamples.Ids(File, "nitrogen");

    public static TheoryData<string> Doses => WorkedExamples.Ids(File, "dose");

    public static TheoryData<string> Secondaries => WorkedExamples.Ids(File, "secondary");

    public static TheoryData<string> OrganicMatters => WorkedExamples.Ids(File, "organic-matter");

    public static TheoryData<string> Quiets => WorkedExamples.Ids(File, "quiet");

    public static TheoryData<string> Elements => WorkedExamples.Ids(File, "element");

    [Theory, MemberData(nameof(Removals))]
    public void A_crop_removes_what_is_published(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var figure = RemovalFigure.Find(row.Text("rule"));
        var yield = YieldOf(row)!.Value;
        var removal = row.TextOrNull("kept") is { } kept ? CropRemoval.Grazed(figure, yield, RetainedShare.Find(kept))
            : CropRemoval.CarriedOff(figure, yield, row.NumberOrNull("part_percent") is { } percent ? Fraction.FromPercent(percent) : null);
        var removed = removal.Find(row.Choice<PlantNutrient>("nutrient"))!;
        WorkedExamples.AssertMatches(row, (row.Text("end") == "low" ? removed.Low : removed.High).PoundsPerAcre);
    }

    [Theory, MemberData(nameof(Nitrogens))]
    public void Nitrogen_is_what_is_published(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var answer = NitrogenRule.Find(row.Text("rule")).Answer(YieldOf(row), row.NumberOrNull("reduction") is { } pounds ? ApplicationRate.FromPoundsPerAcre(pounds) : null);
        WorkedExamples.AssertMatches(row, (row.Text("end") == "low" ? answer.Low : answer.High)!.Value.PoundsPerAcre);
    }

    [Theory, MemberData(nameof(Doses))]
    public void Nitrogen_is_split_as_published(string id)
    {
        var row = WorkedExamples.Find(File, id);
        WorkedExamples.AssertMatches(row, NitrogenRule.Find(row.Text("rule")).Answer().Doses[row.Integer("end") - 1].High.PoundsPerAcre);
    }

    [Theory, MemberData(nameof(Secondaries))]
    public void A_secondary_nutrient_is_what_is_published(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var rule = SecondaryRule.Find(row.Text("rule"));
        var report = new SoilReport
        {
            Laboratory = "a laboratory",
            WaterPh = row.NumberOrNull("ph") is { } ph ? WaterPh.FromValue(ph) : null,
            SoilClass = row.TextOrNull("soil_class") is null ? null : row.Choice<SoilClass>("soil_class"),
            Readings = row.NumberOrNull("test") is { } test ? [SoilReading.FromPrinted(AnalyteOf(rule.Nutrient), test, row.Choice<SoilTestUnit>("test_unit"), row.Choice<Extractant>("extractant"))] : [],
        };
        var answer = rule.Answer(report);
        WorkedExamples.AssertMatches(row, (row.Text("end") == "low" ? answer.Low : answer.High)!.Value.PoundsPerAcre);
        Assert.Equal(rule.Status == DataStatus.Memory, answer.Findings.Any(f => f.Code == "data-from-memory"));
    }

    /// <summary>A published report of orchardgrass that asks for none: no rule held for this kind may ask for any.</summary>
    [Theory, MemberData(nameof(Quiets))]
    public void Where_a_published_report_asks_for_none_no_rule_for_the_kind_asks_for_any(string id)
    {
        var row = WorkedExamples.Find(File, id);
        SoilReading Read(SoilAnalyte analyte, double pounds) => SoilReading.FromPrinted(analyte, pounds, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1);
        var need = PlotNeed.For(new PlotNeedRequest
        {
            Soil = new SoilReport
            {
                Laboratory = "Georgia",
                WaterPh = WaterPh.FromValue(5.9),
                Readings = [Read(SoilAnalyte.Phosphorus, 43), Read(SoilAnalyte.Potassium, 119), Read(SoilAnalyte.Calcium, 1385), Read(SoilAnalyte.Magnesium, 215), Read(SoilAnalyte.Zinc, 8), Read(SoilAnalyte.Manganese, 77)],
            },
            Kinds = [NeedSamples.Kind("orchardgrass", 1)],
            System = RecommendationSystem.Find("SC"),
            SecondaryRules = [.. SecondaryRule.All.Concat(SecondaryRule.Unchecked).Where(r => r.Nutrient == row.Choice<PlantNutrient>("nutrient"))],
        });
        WorkedExamples.AssertMatches(row, need.Find(row.Choice<PlantNutrient>("nutrient"))?.AtLeast.PoundsPerAcre ?? 0);
    }

    [Fact]
    public void A_published_row_that_is_not_tested_says_why() => WorkedExamples.AssertSkippedRowsSayWhy(File);

    [Theory, MemberData(nameof(OrganicMatters))]
    public void Organic_matter_sets_free_what_is_published(string id)
    {
        var row = WorkedExamples.Find(File, id);
        WorkedExamples.AssertMatches(row, SecondaryRule.SulfurReleased(Fraction.FromPercent(row.Number("test"))).PoundsPerAcre);
    }

    [Theory, MemberData(nameof(Elements))]
    public void An_element_is_not_an_oxide(string id)
    {
        var row = WorkedExamples.Find(File, id);
        WorkedExamples.AssertMatches(row, PrintedRate.FromElement(row.Choice<PlantNutrient>("nutrient"), ApplicationRate.FromPoundsPerAcre(row.Number("test"))).Low.PoundsPerAcre);
    }

    private static CropYield? YieldOf(CsvRow row) => row.NumberOrNull("yield") is not { } amount ? null
        : row.Choice<YieldUnit>("yield_unit") == YieldUnit.Bushel ? CropYield.FromBushelsPerAcre(amount) : CropYield.FromTonsPerAcre(amount);

    private static SoilAnalyte AnalyteOf(PlantNutrient nutrient) => Enum.Parse<SoilAnalyte>(nutrient.ToString());
}
