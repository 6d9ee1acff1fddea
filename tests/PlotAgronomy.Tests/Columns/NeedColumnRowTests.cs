using PlotAgronomy.Columns;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Nutrients;
using PlotAgronomy.Tests.Support;
using static PlotAgronomy.Tests.Nutrients.SystemRequests;

namespace PlotAgronomy.Tests.Columns;

/// <summary>Published needs by a column, and what holds of columns whatever the system.</summary>
public class NeedColumnRowTests
{
    private const string File = "Nutrients/worked-systems.csv";

    private const int Rows = 10_000;

    /// <summary>What a column answers: no nitrogen, no parts of a sum, no grid that goes by two readings.</summary>
    public static TheoryData<string> Needs =>
        [.. WorkedExamples.Ids(File, "need").Select(id => (string)id).Where(id => IsOfAColumn(WorkedExamples.Find(File, id)))];

    public static TheoryData<string> Systems => [.. RecommendationSystem.Everything.Select(s => s.Id)];

    private static PlotSoil Known => PlotSoil.For(Report() with { SampleMoisture = SampleMoisture.FieldMoist, PrintedPhosphorusRating = "medium" })
        with
    { SoilClass = SoilClass.Mineral, PhosphorusSupply = SoilSupply.Medium, ExchangeCapacityGroup = SoilSupply.High };

    [Fact]
    public void Half_a_hundred_published_needs_are_asked() => Assert.True(Needs.Count >= 45);

    [Theory, MemberData(nameof(Needs))]
    public void A_column_gives_the_published_need(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var crop = row.Choice<CropRow>("crop");
        CropYield? yield = row.NumberOrNull("yield") is { } perAcre ? YieldFor(crop, perAcre) : null;
        var use = row.TextOrNull("carried_off") == "yes" ? CropUse.CarriedOff(crop, yield!.Value) : CropUse.Browsed(crop, yield);
        use = use with { BuildUpYears = row.NumberOrNull("years") is { } years ? (int)years : null };
        var column = ColumnOf(RecommendationSystem.Find(row.Text("system")), NutrientOf(row), use, row.Choice<Extractant>("extractant"), row.Choice<SoilTestUnit>("test_unit"), SystemRequests.Known(Report(), row));
        Assert.False(column.ReadsExchangeCapacity, "the row states its capacity, where the system goes by it");
        double[] rate = [0], low = [0], high = [0];
        column.Rates([row.Number("test")], [], rate, new RowStatus[1], []);
        column.Ranges([row.Number("test")], [], low, high, new RowStatus[1], []);
        WorkedExamples.AssertMatches(row, row.Text("quantity") switch { "rate" => rate[0], "low" => low[0], _ => high[0] });
    }

    [Theory, MemberData(nameof(Systems))]
    public void Ten_thousand_rows_allocate_nothing(string id)
    {
        foreach (var column in ColumnsOf(id))
        {
            var (reading, capacity) = Drawn(column);
            var (rates, high, status, flags) = (new double[Rows], new double[Rows], new RowStatus[Rows], new ulong[Rows]);
            Assert.Equal(0, Allocations.LeastOf(Fill));

            void Fill()
            {
                column.Rates(reading, capacity, rates, status, flags);
                column.Ranges(reading, capacity, rates, high, status, flags);
            }
        }
    }

    [Theory, MemberData(nameof(Systems))]
    public void Slices_by_two_threads_give_what_the_whole_gives(string id)
    {
        foreach (var column in ColumnsOf(id))
        {
            var (reading, capacity) = Drawn(column);
            var whole = (Rates: new double[Rows], Status: new RowStatus[Rows], Flags: new ulong[Rows]);
            var sliced = (Rates: new double[Rows], Status: new RowStatus[Rows], Flags: new ulong[Rows]);
            column.Rates(reading, capacity, whole.Rates, whole.Status, whole.Flags);
            int[] cuts = [0, 1, 513, 4097, 4097, Rows];
            Parallel.For(0, cuts.Length - 1, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i =>
            {
                var rows = cuts[i]..cuts[i + 1];
                column.Rates(reading.AsSpan()[rows], capacity.Length > 0 ? capacity.AsSpan()[rows] : [], sliced.Rates.AsSpan()[rows], sliced.Status.AsSpan()[rows], sliced.Flags.AsSpan()[rows]);
            });
            Assert.Equal(whole.Rates, sliced.Rates);
            Assert.Equal(whole.Status, sliced.Status);
            Assert.Equal(whole.Flags, sliced.Flags);
        }
    }

    [Fact]
    public void Each_status_is_reached()
    {
        var column = ColumnOf(RecommendationSystem.Find("NI"), PlantNutrient.Phosphate, CropUse.Browsed(CropRow.GrassEstablishment), Extractant.Olsen, SoilTestUnit.MilligramsPerCubicDecimeter, Known);
        double[] rates = new double[5];
        var status = new RowStatus[5];
        ulong[] flags = new ulong[5];
        column.Rates([8, 50, 71, double.NaN, -1], [], rates, status, flags);
        // SOIL-NI1: 120 kg/ha at index 0, none at index 4, no class above 70 mg/l; 1 kg/ha = 0.8921791 lb/ac.
        Assert.Equal(107.0615, rates[0], 1e-4);
        Assert.Equal([RowStatus.Answered, RowStatus.NoneNeeded, RowStatus.OutsideDomain, RowStatus.Missing, RowStatus.Implausible], status);
        Assert.Equal(0, rates[1]);
        Assert.All(rates[2..], rate => Assert.True(double.IsNaN(rate)));
        Assert.Equal("nutrient-beyond-printed-table", Assert.Single(column.RowFindings.In(flags[2])).Code);
        Assert.Equal("column-value-missing", Assert.Single(column.RowFindings.In(flags[3])).Code);
        Assert.Equal("column-value-impossible", Assert.Single(column.RowFindings.In(flags[4])).Code);
        Assert.Contains(column.Findings, f => f.Code == "nutrient-legal-maximum");
    }

    [Fact]
    public void What_holds_for_all_rows_is_said_once()
    {
        var kansas = ColumnOf(RecommendationSystem.Kansas, PlantNutrient.Phosphate, CropUse.Browsed(CropRow.Corn, CropYield.FromBushelsPerAcre(100)), Extractant.BrayP1, SoilTestUnit.PartsPerMillion, Known);
        Assert.Contains(kansas.Findings, f => f.Code == "data-from-memory");
        Assert.Contains(kansas.Findings, f => f.Code == "nutrient-system-superseded");
        Assert.Equal(kansas.Findings.Length, kansas.Findings.Select(f => f.Code).Distinct().Count());
        var silent = ColumnOf(RecommendationSystem.Kansas, PlantNutrient.Phosphate, CropUse.Browsed(CropRow.Corn), Extractant.BrayP1, SoilTestUnit.PartsPerMillion, Known);
        Assert.Contains("yield", silent.Unanswered!.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_finding_of_any_row_names_no_row()
    {
        var cap = ColumnOf(RecommendationSystem.TriState1995, PlantNutrient.Potash, CropUse.Browsed(CropRow.Alfalfa), Extractant.AmmoniumAcetate, SoilTestUnit.PartsPerMillion, Known);
        Assert.Contains("nutrient-yearly-cap", cap.RowFindings.Codes);
        var corn = ColumnOf(RecommendationSystem.TriState1995, PlantNutrient.Potash, CropUse.Browsed(CropRow.Corn), Extractant.AmmoniumAcetate, SoilTestUnit.PartsPerMillion, Known);
        Assert.DoesNotContain("nutrient-yearly-cap", corn.RowFindings.Codes);
        Assert.All(cap.RowFindings.In((1UL << cap.RowFindings.Codes.Length) - 1), f => Assert.DoesNotContain('{', f.Text));
    }

    [Fact]
    public void Spans_are_checked_before_the_first_row()
    {
        var column = ColumnOf(RecommendationSystem.Find("TS-2020"), PlantNutrient.Potash, CropUse.Browsed(CropRow.Corn), Extractant.Mehlich3, SoilTestUnit.PartsPerMillion, Known);
        Assert.True(column.ReadsExchangeCapacity);
        double[] two = [1, 2], other = [4, 5], more = [1, 2, 3];
        Assert.Equal("exchangeCapacity", Assert.Throws<ArgumentException>(() => column.Rates(two, [], new double[2], new RowStatus[2], [])).ParamName);
        Assert.Equal("rates", Assert.Throws<ArgumentException>(() => column.Rates(two, two, more, new RowStatus[2], [])).ParamName);
        Assert.Equal("status", Assert.Throws<ArgumentException>(() => column.Rates(two, two, new double[2], new RowStatus[1], [])).ParamName);
        Assert.Equal("flags", Assert.Throws<ArgumentException>(() => column.Rates(two, two, new double[2], new RowStatus[2], new ulong[1])).ParamName);
        Assert.Equal("rates", Assert.Throws<ArgumentException>(() => column.Rates(two, other, two, new RowStatus[2], [])).ParamName);
        Assert.Equal("high", Assert.Throws<ArgumentException>(() => column.Ranges(two, other, more.AsSpan(0, 2), more.AsSpan(1, 2), new RowStatus[2], [])).ParamName);
        column.Rates([], [], [], [], []);
        var known = ColumnOf(RecommendationSystem.Find("TS-2020"), PlantNutrient.Potash, CropUse.Browsed(CropRow.Corn), Extractant.Mehlich3, SoilTestUnit.PartsPerMillion, Known with { ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(9) });
        Assert.False(known.ReadsExchangeCapacity);
        Assert.Equal("exchangeCapacity", Assert.Throws<ArgumentException>(() => known.Rates(two, two, new double[2], new RowStatus[2], [])).ParamName);
    }

    [Fact]
    public void What_a_column_is_made_of_is_checked()
    {
        var use = CropUse.Browsed(CropRow.Alfalfa, CropYield.FromTonsPerAcre(4));
        Assert.Equal("system", Assert.Throws<ArgumentException>(() => NeedColumn.ForPotash(RecommendationSystem.Find("MT"), use, Extractant.Olsen, SoilTestUnit.PartsPerMillion, Known)).ParamName);
        Assert.Equal("unit", Assert.Throws<ArgumentException>(() => NeedColumn.ForPhosphate(RecommendationSystem.Find("MT"), use, Extractant.Olsen, SoilTestUnit.DecisiemensPerMeter, Known)).ParamName);
        Assert.Equal("extractant", Assert.Throws<ArgumentOutOfRangeException>(() => NeedColumn.ForPhosphate(RecommendationSystem.Find("MT"), use, (Extractant)99, SoilTestUnit.PartsPerMillion, Known)).ParamName);
        Assert.Equal("soil", Assert.Throws<ArgumentNullException>(() => NeedColumn.ForPhosphate(RecommendationSystem.Find("MT"), use, Extractant.Olsen, SoilTestUnit.PartsPerMillion, null!)).ParamName);
    }

    private static bool IsOfAColumn(CsvRow row) =>
        row.NumberOrNull("second_test") is null && NutrientOf(row) != PlantNutrient.Nitrogen && row.Text("quantity") is ("rate" or "low" or "high");

    private static NeedColumn ColumnOf(RecommendationSystem system, PlantNutrient nutrient, CropUse use, Extractant extractant, SoilTestUnit unit, PlotSoil soil) =>
        nutrient == PlantNutrient.Phosphate ? NeedColumn.ForPhosphate(system, use, extractant, unit, soil) : NeedColumn.ForPotash(system, use, extractant, unit, soil);

    /// <summary>A column of each nutrient, and one in a unit that is converted.</summary>
    private static IEnumerable<NeedColumn> ColumnsOf(string id)
    {
        var system = RecommendationSystem.Find(id);
        foreach (var test in system.Accepts)
        {
            var use = CropUse.Browsed(test.Crops[0], YieldFor(test.Crops[0], 5));
            yield return ColumnOf(system, test.Nutrient, use, test.Extractants[0], test.Unit, Known);
            yield return ColumnOf(system, test.Nutrient, use, test.Extractants[0], SoilTestUnit.KilogramsPerHectare, Known);
        }
    }

    private static (double[] Reading, double[] Capacity) Drawn(NeedColumn column)
    {
        var random = new Random(11);
        double[] reading = [.. Enumerable.Range(0, Rows).Select(i => i % 40 == 3 ? double.NaN : i % 40 == 5 ? -1 : 300 * random.NextDouble())];
        return (reading, column.ReadsExchangeCapacity ? [.. Enumerable.Range(0, Rows).Select(_ => 30 * random.NextDouble())] : []);
    }
}
