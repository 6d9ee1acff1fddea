using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Liming;

/// <summary>Published rates, equations against printed tables, and second implementations.</summary>
public class LimeWorkedExamples
{
    public static TheoryData<string> Needs => WorkedExamples.Ids("Liming/worked-lime.csv");

    public static TheoryData<string> Regional => WorkedExamples.Ids("Liming/worked-lime-regional.csv");

    public static TheoryData<string> Turf => WorkedExamples.Ids("Liming/worked-lime-turf.csv");

    public static TheoryData<string> Indices => WorkedExamples.Ids("Liming/worked-indices.csv");

    public static TheoryData<string> Compounds => WorkedExamples.Ids("Liming/worked-compounds.csv");

    [Theory, MemberData(nameof(Needs))]
    public void The_need_matches_the_published_figure(string id) => AssertNeed("Liming/worked-lime.csv", id);

    [Theory, MemberData(nameof(Regional))]
    public void The_tri_state_equation_matches_the_regional_table(string id) => AssertNeed("Liming/worked-lime-regional.csv", id);

    [Theory, MemberData(nameof(Turf))]
    public void The_turf_table_follows_the_rule_rebuilt_from_it(string id) => AssertNeed("Liming/worked-lime-turf.csv", id);

    [Theory, MemberData(nameof(Indices))]
    public void The_index_matches_the_published_figure(string id)
    {
        var row = WorkedExamples.Find("Liming/worked-indices.csv", id);
        var index = LimeIndex.Find(row.Text("index"));
        var sieves = SieveAnalysis.FromPercent([.. row.Text("sieves").Split(' ').Select(s => s.Split(':')).Select(s => (int.Parse(s[0]), double.Parse(s[1], System.Globalization.CultureInfo.InvariantCulture)))]);
        var material = LimingMaterial.FromAnalysis("sample", LimingForm.GroundLimestone, row.Number("cce"), sieves, Fraction.FromPercent(row.Number("moisture")));
        WorkedExamples.AssertMatches(row, row.Text("quantity") == "fineness" ? 100 * index.FinenessShare(sieves) : material.FigureIn(index).Value);
    }

    [Theory, MemberData(nameof(Compounds))]
    public void The_compound_matches_the_published_figure(string id)
    {
        var row = WorkedExamples.Find("Liming/worked-compounds.csv", id);
        var compound = LimingCompound.All.Single(c => c.Formula == row.Text("formula"));
        WorkedExamples.AssertMatches(row, row.Text("quantity") switch
        {
            "cce" => compound.CcePercent,
            "molar mass" => compound.MolarMassGrams,
            _ => 2000 * 100 / compound.CcePercent,
        });
    }

    private static void AssertNeed(string file, string id)
    {
        var row = WorkedExamples.Find(file, id);
        var earlier = row.NumberOrNull("earlier_ton") is { } tons
            ? EarlierLime.FromRate(ApplicationRate.FromShortTonsPerAcre(tons), row.Number("earlier_months")) : null;
        var need = LimeMethod.Find(row.Text("method")).NeedFor(Sample(row), row.Number("target_ph"), earlier);
        Assert.NotNull(need.Rate);
        WorkedExamples.AssertMatches(row, row.Text("quantity") switch
        {
            "rate" => need.Rate.OfBasis.ShortTonsPerAcre,
            "gross" => need.Gross!.OfBasis.ShortTonsPerAcre,
            "published" => need.Published!.OfBasis.ShortTonsPerAcre,
            "pounds" => need.Rate.OfBasis.PoundsPerAcre,
            "per thousand" => need.Rate.OfBasis.PoundsPerThousandSquareFeet,
            var other => throw new InvalidOperationException(other),
        });
    }

    private static SoilReport Sample(CsvRow row) => new()
    {
        Laboratory = "test laboratory",
        WaterPh = row.NumberOrNull("water_ph") is { } ph ? WaterPh.FromValue(ph) : null,
        BufferPhs = row.ChoiceOrNull<SoilBuffer>("buffer") is { } buffer ? [BufferPh.FromValue(row.Number("reading"), buffer)] : [],
        ExchangeableAcidity = row.NumberOrNull("acidity_100_g") is { } mass ? CationCharge.FromMilliequivalentsPer100Grams(mass)
            : row.NumberOrNull("acidity_100_cm3") is { } volume ? CationCharge.FromMilliequivalentsPer100CubicCentimeters(volume) : null,
        Readings = row.NumberOrNull("aluminum_ppm") is { } aluminum
            ? [SoilReading.FromPrinted(SoilAnalyte.Aluminum, aluminum, SoilTestUnit.PartsPerMillion, Extractant.ModifiedMorgan)] : [],
        Texture = row.ChoiceOrNull<SoilTexture>("texture"),
        SoilClass = row.Text("method") == "tri-state-1995-organic" ? SoilClass.Organic : SoilClass.Mineral,
        LimeBufferCapacity = row.NumberOrNull("lbc30") is { } capacity ? LimeBufferCapacity.FromThirtyMinutes(capacity) : null,
    };
}
