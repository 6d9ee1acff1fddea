using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>Every system against values worked out apart from this code; the source stands in each row.</summary>
public class SystemWorkedExamples
{
    private const string File = "Nutrients/worked-systems.csv";

    public static TheoryData<string> Needs => WorkedExamples.Ids(File, "need");

    public static TheoryData<string> Ratings => WorkedExamples.Ids(File, "rating");

    public static TheoryData<string> Manganese => WorkedExamples.Ids(File, "manganese");

    public static TheoryData<string> Removals => WorkedExamples.Ids(File, "removal");

    public static TheoryData<string> Bands => WorkedExamples.Ids(File, "band");

    public static TheoryData<string> Curves => WorkedExamples.Ids(File, "curve");

    [Theory, MemberData(nameof(Needs))]
    public void The_system_gives_the_published_need(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var need = SystemRequests.Ask(row).For(SystemRequests.NutrientOf(row));
        Assert.NotNull(need);
        WorkedExamples.AssertMatches(row, Quantity(need, row.Text("quantity")));
    }

    [Theory, MemberData(nameof(Needs))]
    public void An_answer_never_stands_better_than_the_worked_numbers_behind_it(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var need = SystemRequests.Ask(row).For(SystemRequests.NutrientOf(row))!;
        if (row.Text("status") == "memory")
        {
            Assert.Equal(DataStatus.Memory, need.Status);
            Assert.Contains(SystemRequests.Ask(row).Findings, f => f.Code == "data-from-memory");
        }
    }

    [Theory, MemberData(nameof(Ratings))]
    public void The_system_gives_the_published_rating(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var analyte = row.Choice<SoilAnalyte>("nutrient");
        var report = SystemRequests.Report(SoilReading.FromPrinted(analyte, row.Number("test"), row.Choice<SoilTestUnit>("test_unit"), row.Choice<Extractant>("extractant")));
        var rating = RatingSystem.Find(row.Text("system")).Rate(SystemRequests.Known(report, row)).For(analyte);
        Assert.NotNull(rating);
        WorkedExamples.AssertMatches(row, rating.Class.Order);
    }

    [Theory, MemberData(nameof(Manganese))]
    public void The_manganese_index_is_the_published_one(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var ph = WaterPh.FromValue(row.Number("second_test"));
        var reading = SoilReading.FromPrinted(SoilAnalyte.Manganese, row.Number("test"), row.Choice<SoilTestUnit>("test_unit"), Extractant.Mehlich3);
        WorkedExamples.AssertMatches(row, row.Text("quantity") switch
        {
            "A" => ManganeseAvailability.NorthCarolinaA(reading, ph).Index,
            "B" => ManganeseAvailability.NorthCarolinaB(reading, ph).Index,
            _ => ManganeseAvailability.NewJersey(reading, ph).Index
                - ManganeseAvailability.NorthCarolinaA(SoilReading.FromPrinted(SoilAnalyte.Manganese, 40, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3), ph).Index,
        });
    }

    [Fact]
    public void An_index_from_memory_says_so_and_shows_its_working()
    {
        var reading = SoilReading.FromPrinted(SoilAnalyte.Manganese, 40, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3);
        var ph = WaterPh.FromValue(6);
        Assert.Equal("data-from-memory", Assert.Single(ManganeseAvailability.NorthCarolinaB(reading, ph).Findings).Code);
        Assert.Empty(ManganeseAvailability.NorthCarolinaA(reading, ph).Findings);
        Assert.Equal("108.2 + 0.6 x 40 - 15.2 x 6 = 41", Assert.Single(ManganeseAvailability.NorthCarolinaB(reading, ph).ShowWork()).Numbers);
    }

    [Theory, MemberData(nameof(Removals))]
    public void The_new_removal_figures_changed_as_the_publication_says(string id)
    {
        var row = WorkedExamples.Find(File, id);
        double figure = CropRemovalFigure.Find("IL", row.Choice<CropRow>("crop"))!.PerUnit(row.Choice<PlantNutrient>("nutrient"));
        WorkedExamples.AssertMatches(row, ((figure / row.Number("test")) - 1) * 100);
    }

    [Theory, MemberData(nameof(Bands))]
    public void Banded_phosphate_replaces_more_broadcast(string id)
    {
        var row = WorkedExamples.Find(File, id);
        WorkedExamples.AssertMatches(row, NutrientNeed.BandedPhosphateFor(ApplicationRate.FromPoundsPerAcre(row.Number("test"))).PoundsPerAcre);
    }

    [Theory, MemberData(nameof(Curves))]
    public void The_curve_first_reaches_zero_where_a_second_implementation_finds_it(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var equation = NorthCarolinaEquation.Find(row.Integer("test"));
        WorkedExamples.AssertMatches(row, equation.StopsAt);
        Assert.Equal(0, equation.Rate(row.Number("expected") + 0.06));
    }

    [Fact]
    public void A_published_row_that_is_not_tested_says_why() => WorkedExamples.AssertSkippedRowsSayWhy(File);

    private static double Quantity(NutrientNeed need, string quantity) => quantity switch
    {
        "rate" => need.Rate.PoundsPerAcre,
        "rate kg/ha" => need.Rate.KilogramsPerHectare,
        "low" => need.PublishedLow.PoundsPerAcre,
        "high" => need.PublishedHigh.PoundsPerAcre,
        "printed" => need.AsPrinted!.Value.PoundsPerAcre,
        "build-up" => need.BuildUp!.Value.PoundsPerAcre,
        "rating limit" => need.Rating!.Scale.Classes[0].PrintedHigh!.Value,
        _ => throw new ArgumentException(quantity),
    };
}
