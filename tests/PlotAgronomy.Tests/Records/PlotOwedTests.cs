using PlotAgronomy.Liming;
using PlotAgronomy.Records;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Records;

public class PlotOwedTests
{
    private static readonly Area HalfAcre = Area.FromAcres(0.5);

    private static LimeRate Rate(double tons, LimeBasis? basis = null) =>
        LimeRate.FromBasis(ApplicationRate.FromShortTonsPerAcre(tons), 6.5, Length.FromInches(6), basis ?? LimeBasis.GroundLimestone, Institution.NorthCarolina);

    private static LimingMaterial Limestone => LimingMaterial.FromBasis(LimeBasis.GroundLimestone);

    private static NeedEntry Need(DateOnly on, double tons, string plot = Books.North) => new() { On = on, Plot = plot, Lime = Rate(tons), Phosphate = ApplicationRate.FromPoundsPerAcre(60) };

    private static LimeEntry Lime(DateOnly on, double bags, string plot = Books.North) => new() { On = on, Plot = plot, Material = Limestone, Loads = [SpreadLoad.FromBags(bags, Mass.FromPounds(40))] };

    private static FertilizerEntry Grade(DateOnly on, double bags, params Area?[] areas) => new()
    {
        On = on,
        Plot = Books.North,
        Product = FertilizerProduct.Create("13-13-13", FertilizerAnalysis.FromGrade("13-13-13")),
        Loads = areas.Length == 0 ? [SpreadLoad.FromBags(bags, Mass.FromPounds(50))] : [.. areas.Select(a => SpreadLoad.FromBags(bags / areas.Length, Mass.FromPounds(50), a))],
    };

    /// <summary>1.5 ton/ac on half an acre is 1,500 lb; 10 bags of 40 lb are 400, 20 more 800 (hand sums).</summary>
    [Fact]
    public void Lime_is_owed_less_what_was_put_down_since_the_need()
    {
        var day = Books.Day(2025, 3, 1);
        var book = PlotBook.Empty.With("a", Lime(day.AddDays(-1), 99), Need(day, 1.5), Lime(day.AddDays(20), 10), Lime(day.AddDays(200), 20));
        Assert.Equal(1500, PlotOwed.Of(book, Books.North, HalfAcre, day).Lime.Value.StillOwed.Pounds, 1e-9);
        Assert.Equal(1100, PlotOwed.Of(book, Books.North, HalfAcre, day.AddDays(20)).Lime.Value.StillOwed.Pounds, 1e-9);
        Assert.Equal(300, PlotOwed.Of(book, Books.North, HalfAcre, day.AddDays(200)).Lime.Value.StillOwed.Pounds, 1e-9);
    }

    /// <summary>60 lb/ac asked; two bags of 50 lb at 13 % are 13 lb, on half an acre 26 lb/ac (hand sums).</summary>
    [Fact]
    public void Nutrients_are_needed_put_down_missing_and_over()
    {
        var day = Books.Day(2025, 3, 1);
        var book = PlotBook.Empty.With("a", Need(day, 0), Grade(day.AddDays(1), 2));
        var owed = PlotOwed.Of(book, Books.North, HalfAcre, day.AddDays(2));
        var phosphate = Assert.Single(owed.Nutrients, n => n.Nutrient == PlantNutrient.Phosphate);
        Assert.Equal((60.0, 26.0, 34.0, 0.0), (phosphate.AtLeast.PoundsPerAcre, phosphate.Delivered.PoundsPerAcre, phosphate.Missing.PoundsPerAcre, phosphate.Surplus.PoundsPerAcre));
        Assert.Equal(26, Assert.Single(owed.Nutrients, n => n.Nutrient == PlantNutrient.Nitrogen).Delivered.PoundsPerAcre, 1e-9);
        Assert.Equal(AnswerState.NoneNeeded, owed.Lime.State);
        Assert.Contains(owed.ShowWork(), l => l.Label == "P2O5 of 13-13-13" && l.Numbers.EndsWith("= 26 lb/ac", StringComparison.Ordinal));
    }

    [Fact]
    public void The_running_balance_tells_every_day_on_which_something_was_done()
    {
        var day = Books.Day(2025, 3, 1);
        var book = PlotBook.Empty.With("a", Lime(day.AddDays(20), 10), Need(day, 1.5), Grade(day.AddDays(20), 1), Lime(day.AddDays(40), 10), Lime(day.AddDays(90), 5));
        var running = PlotOwed.Running(book, Books.North, HalfAcre, day.AddDays(60));
        Assert.Equal([0, 20, 40], running.Select(o => o.On.DayNumber - day.DayNumber));
        Assert.Equal([1500.0, 1100.0, 700.0], running.Select(o => o.Lime.Value.StillOwed.Pounds));
    }

    [Fact]
    public void A_later_need_takes_the_place_of_an_earlier_one()
    {
        var day = Books.Day(2025, 3, 1);
        var book = PlotBook.Empty.With("a", Need(day, 1.5), Lime(day.AddDays(5), 30), Need(day.AddYears(2), 0.5));
        Assert.Equal(500, PlotOwed.Of(book, Books.North, HalfAcre, day.AddYears(2)).Lime.Value.StillOwed.Pounds, 1e-9);
    }

    [Fact]
    public void Without_a_rate_or_a_strength_lime_is_asked_and_not_guessed()
    {
        var day = Books.Day(2025, 3, 1);
        Assert.Equal("record-ask-lime-need", Assert.Single(PlotOwed.Of(PlotBook.Empty, Books.North, HalfAcre, day).Lime.Questions).Code);

        var need = new NeedEntry { On = day, Plot = Books.North, Lime = Rate(1, LimeBasis.All.First(b => b.Figure is { Index.Sieves.Length: > 0 })) };
        var unknown = new LimeEntry { On = day, Plot = Books.North, Material = LimingMaterial.FromAnalysis("pit lime", LimingForm.GroundLimestone, 80), Loads = [SpreadLoad.FromWeight(Mass.FromPounds(500))] };
        var answer = PlotOwed.Of(PlotBook.Empty.With("a", need, unknown), Books.North, HalfAcre, day).Lime;
        Assert.Equal(AnswerState.Open, answer.State);
        Assert.Equal("record-ask-lime-strength", Assert.Single(answer.Questions).Code);
        Assert.True(answer.TryGetPart(out var part));
        Assert.Equal(0, part.Applied.Pounds);
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(6, true)]
    [InlineData(13, false)]
    public void Lime_is_at_work_for_its_months(int months, bool atWork)
    {
        var day = Books.Day(2025, 3, 1);
        var book = PlotBook.Empty.With("a", Lime(day, 10));
        var owed = PlotOwed.Of(book, Books.North, HalfAcre, day.AddMonths(months));
        Assert.Equal(atWork, owed.LimeAtWork.Length == 1);
        Assert.Equal(atWork, owed.Findings.Any(f => f.Code == "record-lime-at-work"));
    }

    [Fact]
    public void Loads_that_left_part_of_the_plot_without_are_named()
    {
        var day = Books.Day(2025, 3, 1);
        var part = PlotOwed.Of(PlotBook.Empty.With("a", Need(day, 0), Grade(day, 2, Area.FromAcres(0.2), Area.FromAcres(0.2))), Books.North, HalfAcre, day);
        Assert.Equal("250", Assert.Single(part.Findings, f => f.Code == "record-not-covered").Values.Single(v => v.Name == "rate").Text);
        var whole = PlotOwed.Of(PlotBook.Empty.With("a", Need(day, 0), Grade(day, 2, Area.FromAcres(0.23), Area.FromAcres(0.23))), Books.North, HalfAcre, day);
        Assert.DoesNotContain(whole.Findings, f => f.Code == "record-not-covered");
    }

    /// <summary>Six plots, 2.4 acres; two of them, 0.3 and 0.4 acre, need 1.5 ton/acre by their own tests.</summary>
    [Fact]
    public void C73_each_plot_is_owed_by_its_own_test()
    {
        var day = Books.Day(2026, 3, 1);
        (string Plot, double Acres, double Tons)[] plots = [("a", 0.3, 1.5), ("b", 0.4, 1.5), ("c", 0.4, 0), ("d", 0.4, 0), ("e", 0.4, 0), ("f", 0.5, 0)];
        var book = PlotBook.Empty;
        foreach (var (plot, _, tons) in plots)
        {
            book = book.With("o", Need(day, tons, plot));
        }

        double owed = plots.Sum(p => PlotOwed.Of(book, p.Plot, Area.FromAcres(p.Acres), day).Lime.Value.StillOwed.Pounds);
        double blanket = plots.Sum(p => p.Acres) * 1.5 * 2000;
        PracticeCase.AssertMatches("C73", "by test", owed);
        PracticeCase.AssertMatches("C73", "bags by test", Package.RoundUp(Mass.FromPounds(owed), Mass.FromPounds(40)));
        PracticeCase.AssertMatches("C73", "blanket", blanket);
        PracticeCase.AssertMatches("C73", "wasted", blanket - owed);
    }

    [Fact]
    public void C73_an_old_test_is_named_and_no_plot_takes_over_the_report_of_another()
    {
        var book = PlotBook.Empty.With("o", new SoilReportEntry { On = Books.Day(2022, 3, 1), Plot = "a", Report = Books.Report(5.5, 20) });
        Assert.Contains(NextYear.Of(book, "a", HalfAcre, Books.Day(2026, 3, 1)).Findings, f => f.Code == "soil-report-old");
        Assert.DoesNotContain(NextYear.Of(book, "a", HalfAcre, Books.Day(2025, 2, 28)).Findings, f => f.Code == "soil-report-old");
        Assert.DoesNotContain(NextYear.Of(book, "a", HalfAcre, Books.Day(2026, 3, 1)).Questions, q => q.Code == "record-ask-report");
        Assert.Contains(NextYear.Of(book, "b", HalfAcre, Books.Day(2026, 3, 1)).Questions, q => q.Code == "record-ask-report");
    }
}
