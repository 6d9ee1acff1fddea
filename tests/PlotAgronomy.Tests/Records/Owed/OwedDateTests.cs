using PlotAgronomy.Liming;
using PlotAgronomy.Records;
using UnitsNet;

namespace PlotAgronomy.Tests.Records;

/// <summary>From which day on, and up to which, what was spread counts; sums by hand.</summary>
public class OwedDateTests
{
    private static readonly Area HalfAcre = Area.FromAcres(0.5);

    private static readonly DateOnly Day = Books.Day(2025, 3, 1);

    private static readonly FertilizerProduct Grade = FertilizerProduct.Create(
        "10-20-0",
        FertilizerAnalysis.FromGrade("10-20-0")
    );

    private static NeedEntry Need(int day, double? phosphate = null, double? nitrogen = null, double? limeTons = null) => new()
    {
        On = Day.AddDays(day),
        Plot = Books.North,
        Phosphate = Rate(phosphate),
        Nitrogen = Rate(nitrogen),
        Lime = limeTons is { } tons
            ? LimeRate.FromBasis(
                ApplicationRate.FromShortTonsPerAcre(tons),
                6.5,
                Length.FromInches(6),
                LimeBasis.GroundLimestone,
                Institution.NorthCarolina
            )
            : null,
    };

    private static ApplicationRate? Rate(double? pounds) => pounds is { } known ? ApplicationRate.FromPoundsPerAcre(known) : null;

    /// <summary>A bag of 50 lb of 10-20-0 brings half an acre 10 lb/ac nitrogen and 20 phosphate.</summary>
    private static FertilizerEntry Bag(int day) => new()
    {
        On = Day.AddDays(day),
        Plot = Books.North,
        Product = Grade,
        Loads = [SpreadLoad.FromBags(1, Mass.FromPounds(50))],
    };

    private static LimeEntry Lime(int day, params SpreadLoad[] loads) => new()
    {
        On = Day.AddDays(day),
        Plot = Books.North,
        Material = LimingMaterial.FromBasis(LimeBasis.GroundLimestone),
        Loads = [.. loads],
    };

    private static PlotOwed Owed(int day, params BookEntry[] entries) =>
        PlotOwed.Of(PlotBook.Empty.With("a", entries), Books.North, HalfAcre, Day.AddDays(day));

    private static double Delivered(PlotOwed owed, PlantNutrient nutrient) =>
        owed.Nutrients.SingleOrDefault(n => n.Nutrient == nutrient)?.Delivered.PoundsPerAcre ?? 0;

    [Theory]
    [InlineData(-1, 0)]
    [InlineData(0, 20)]
    [InlineData(9, 20)]
    [InlineData(10, 20)]
    [InlineData(11, 0)]
    public void What_was_spread_from_the_day_of_the_need_to_the_day_asked_counts(int day, double pounds) =>
        Assert.Equal(pounds, Delivered(Owed(10, Need(0, phosphate: 60), Bag(day)), PlantNutrient.Phosphate), 1e-9);

    [Fact]
    public void A_need_of_the_day_asked_counts_and_one_of_the_day_after_does_not()
    {
        Assert.Equal(60, Assert.Single(Owed(5, Need(5, phosphate: 60)).Nutrients).AtLeast.PoundsPerAcre);
        Assert.Empty(Owed(5, Need(6, phosphate: 60)).Nutrients);
        Assert.Equal(500, Owed(5, Need(5, limeTons: 0.5)).Lime.Value.StillOwed.Pounds, 1e-9);
        Assert.Equal(AnswerState.Open, Owed(5, Need(6, limeTons: 0.5)).Lime.State);
    }

    [Fact]
    public void What_was_not_asked_counts_from_the_last_need_and_without_any_from_the_start()
    {
        var owed = Owed(30, Need(0, nitrogen: 40), Bag(5), Need(10, phosphate: 60), Bag(20));
        Assert.Equal(20, Delivered(owed, PlantNutrient.Nitrogen), 1e-9);
        Assert.Equal(20, Delivered(owed, PlantNutrient.Phosphate), 1e-9);
        Assert.Equal(10, Delivered(Owed(30, Bag(5), Need(10, phosphate: 60), Bag(20)), PlantNutrient.Nitrogen), 1e-9);
        var never = Owed(30, Bag(-900), Bag(5));
        Assert.Equal(40, Delivered(never, PlantNutrient.Phosphate), 1e-9);
        Assert.All(never.Nutrients, n => Assert.False(n.IsAsked));
        Assert.DoesNotContain(never.Nutrients, n => n.Nutrient == PlantNutrient.Potash);
    }

    [Fact]
    public void Only_needs_and_what_was_spread_make_a_day_of_the_running_balance()
    {
        var rain = new RainEntry { On = Day.AddDays(3), Plot = Books.North, Amount = Length.FromInches(1) };
        var book = PlotBook.Empty.With(
            "a",
            Need(0, phosphate: 60),
            rain,
            Bag(5),
            Bag(9),
            Lime(9, SpreadLoad.FromWeight(Mass.FromPounds(100)))
        );
        Assert.Equal(
            [0, 5, 9],
            PlotOwed.Running(book, Books.North, HalfAcre, Day.AddDays(9)).Select(o => o.On.DayNumber - Day.DayNumber)
        );
        Assert.Equal(
            [0, 5],
            PlotOwed.Running(book, Books.North, HalfAcre, Day.AddDays(8)).Select(o => o.On.DayNumber - Day.DayNumber)
        );
    }

    [Fact]
    public void Lime_of_before_the_need_is_not_counted_and_still_at_work()
    {
        var owed = Owed(
            30,
            Lime(-1, SpreadLoad.FromWeight(Mass.FromPounds(200))),
            Need(0, limeTons: 0.5),
            Lime(0, SpreadLoad.FromWeight(Mass.FromPounds(100)))
        );
        Assert.Equal(400, owed.Lime.Value.StillOwed.Pounds, 1e-9);
        Assert.Equal(2, owed.LimeAtWork.Length);
        Assert.Equal(["200 lb", "100 lb"], owed.LimeAtWork.Select(l => l.Told().Values.Single(v => v.Name == "pounds").Text));
        var told = owed.LimeAtWork[0].Told();
        Assert.Equal(
            ["2025-02-28", "2026-02-28"],
            new[] { "date", "done" }.Select(name => told.Values.Single(v => v.Name == name).Text)
        );
    }

    [Fact]
    public void A_load_is_shown_by_its_bags_and_by_the_ground_it_went_on()
    {
        // 10 bags of 40 lb are 400 lb: over half an acre 800 lb/ac; 120 lb on 0.2 acre are 600.
        var lime = Lime(
            1,
            SpreadLoad.FromBags(10, Mass.FromPounds(40)),
            SpreadLoad.FromWeight(Mass.FromPounds(120), Area.FromAcres(0.2))
        );
        var work = Owed(5, Need(0, limeTons: 1), lime).ShowWork().Take(3).Select(l => l.Numbers).ToList();
        Assert.Equal("10 x 40 = 400 lb", work[0]);
        Assert.EndsWith(" = 800 lb/ac", work[1], StringComparison.Ordinal);
        Assert.EndsWith(" = 600 lb/ac", work[2], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.224, true)]
    [InlineData(0.226, false)]
    [InlineData(0.25, false)]
    public void A_tenth_of_the_plot_may_be_left_without(double acresOfEach, bool isNamed)
    {
        var loads = Enumerable.Repeat(SpreadLoad.FromWeight(Mass.FromPounds(50), Area.FromAcres(acresOfEach)), 2).ToArray();
        var limed = Owed(5, Need(0, limeTons: 1), Lime(1, loads));
        Assert.Equal(isNamed, limed.Findings.Any(f => f.Code == "record-not-covered"));
        var oneWithout = Owed(5, Need(0, limeTons: 1), Lime(1, [.. loads, SpreadLoad.FromWeight(Mass.FromPounds(50))]));
        Assert.DoesNotContain(oneWithout.Findings, f => f.Code == "record-not-covered");
    }
}
