using System.Collections.Immutable;
using PlotAgronomy.Records;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Tests.Records;

public class StandAndUseTests
{
    private static readonly DateOnly Sown = Books.Day(2025, 9, 1);

    /// <summary>10 lb/ac PLS of a kind of 200,000 seeds a pound: 45.9 living seeds a square foot (2,000,000 / 43,560).</summary>
    private static SowingEntry Sowing(string kind = "crimson clover", DateOnly? on = null, double pounds = 10) => new()
    {
        On = on ?? Sown,
        Plot = Books.North,
        Area = Area.FromAcres(1),
        Method = SowingMethod.Broadcast,
        Lots = [new() { Lot = new() { Label = "a", Kind = Books.Kind(kind), Analysis = SeedAnalysis.FromFractions(Fraction.One, Fraction.One), OwnSeedCount = SeedCount.FromSeedsPerPound(200_000) }, Used = BulkSeedMass.FromPounds(pounds) }],
    };

    private static CountEntry Count(int days, int[] plants, string? kind = "crimson clover", DateOnly? sown = null) => new()
    {
        On = (sown ?? Sown).AddDays(days),
        Plot = Books.North,
        Kind = kind is null ? null : Books.Kind(kind),
        Hoop = Area.FromSquareFeet(1),
        Plants = [.. plants],
    };

    private static StandOutcome Stand(int days, params int[] plants) =>
        Assert.Single(StandOutcome.All(PlotBook.Empty.With("a", Sowing(), Count(days, plants)), Books.North)).Value;

    [Fact]
    public void Plants_are_held_against_the_living_seed_with_a_range()
    {
        var stand = Stand(25, 22, 25, 24, 26, 21, 23, 27, 22, 24, 26);
        Assert.Equal(2_000_000 / 43_560.0, stand.LiveSeedsPerSquareFoot, 1e-9);
        Assert.Equal(24 / (2_000_000 / 43_560.0), stand.Emergence, 1e-9);
        Assert.InRange(stand.PlantsPerSquareFootLow, 21.0, 21.1);
        Assert.True(stand.EmergenceLow < stand.Emergence && stand.Emergence < stand.EmergenceHigh);
        Assert.Equal(StandVerdict.Full, stand.Verdict);
        Assert.Empty(stand.Findings);
        Assert.Equal(3, stand.ShowWork().Length);
    }

    [Theory]
    [InlineData(25, StandVerdict.Failed, "record-stand-failed", 1, 0, 2, 1, 0, 3, 1, 0)]
    [InlineData(25, StandVerdict.Thin, "record-stand-thin", 9, 10, 8, 11, 9, 10, 9, 8)]
    [InlineData(25, StandVerdict.Unsure, null, 0, 40, 3, 25, 1, 18)]
    [InlineData(17, StandVerdict.Unsure, "record-count-off-time", 22, 25, 24, 26, 21, 23)]
    [InlineData(36, StandVerdict.Unsure, "record-count-off-time", 22, 25, 24, 26, 21, 23)]
    [InlineData(18, StandVerdict.Full, null, 22, 25, 24, 26, 21, 23)]
    [InlineData(35, StandVerdict.Full, null, 22, 25, 24, 26, 21, 23)]
    [InlineData(25, StandVerdict.Full, "record-few-hoops", 22, 25, 24, 26)]
    [InlineData(25, StandVerdict.Full, "record-more-than-sown", 60, 62, 58, 61, 65)]
    public void The_verdict_says_only_what_the_count_bears(int days, StandVerdict verdict, string? code, params int[] plants)
    {
        var stand = Stand(days, plants);
        Assert.Equal(verdict, stand.Verdict);
        Assert.Equal(code, stand.Findings.SingleOrDefault()?.Code);
    }

    [Fact]
    public void A_range_holds_the_truth_nearly_always_also_where_the_stand_is_patchy()
    {
        var random = new Random(20260901);
        foreach (double patchiness in new[] { 0.0, 0.6 })
        {
            int held = 0;
            for (int run = 0; run < 600; run++)
            {
                ImmutableArray<int> counts = [.. Enumerable.Range(0, 12).Select(_ => Poisson(random, 8 * Math.Exp((patchiness * Normal(random)) - (patchiness * patchiness / 2))))];
                var (low, high) = CountInterval.OfMean(counts);
                held += low <= 8 && high >= 8 ? 1 : 0;
            }

            Assert.InRange(held / 600.0, 0.91, 1);
        }
    }

    [Fact]
    public void Passes_of_one_stand_are_taken_together_and_older_ones_are_not()
    {
        var book = PlotBook.Empty.With("a", Sowing(on: Sown.AddDays(-60)), Sowing("winter oats", Sown.AddDays(-3), 20), Sowing(), Count(25, [30, 31, 29, 28, 33], null));
        var stand = Assert.Single(StandOutcome.All(book, Books.North)).Value;
        Assert.Equal(2, stand.Sowings.Length);
        Assert.Equal(3 * 2_000_000 / 43_560.0, stand.LiveSeedsPerSquareFoot, 1e-9);
    }

    [Fact]
    public void Rain_before_and_after_comes_from_the_gauge_and_none_is_not_zero()
    {
        Assert.Null(Stand(25, 20).RainBefore);
        RainEntry Rain(int day, double inches) => new() { On = Sown.AddDays(day), Plot = Books.North, Amount = Length.FromInches(inches) };
        var book = PlotBook.Empty.With("a", Sowing(), Count(25, [20]), Rain(-20, 5), Rain(-3, 0.5), Rain(2, 0.25), Rain(28, 0.5), Rain(29, 5));
        var stand = Assert.Single(StandOutcome.All(book, Books.North)).Value;
        Assert.Equal((0.5, 0.75), (stand.RainBefore!.Value.Inches, stand.RainAfter!.Value.Inches));
    }

    [Fact]
    public void A_count_without_a_sowing_is_asked_about()
    {
        var answer = Assert.Single(StandOutcome.All(PlotBook.Empty.With("a", Count(25, [20])), Books.North));
        Assert.Equal("record-ask-sown", Assert.Single(answer.Questions).Code);
    }

    [Fact]
    public void A_kind_whose_seeds_are_not_counted_is_asked_about()
    {
        var uncounted = Books.Kind("crimson clover") with { SeedCount = null };
        var sowing = Sowing();
        var lot = sowing.Lots[0] with { Lot = sowing.Lots[0].Lot with { Kind = uncounted, OwnSeedCount = null } };
        var answer = Assert.Single(StandOutcome.All(PlotBook.Empty.With("a", sowing with { Lots = [lot] }, Count(25, [20])), Books.North));
        Assert.Equal(AnswerState.Open, answer.State);
        Assert.Equal("record-ask-seed-count", Assert.Single(answer.Questions).Code);
    }

    private static ClippingEntry Clipping(params (double Inside, double Outside)[] pairs) => new()
    {
        On = Sown,
        Plot = Books.North,
        Clipped = Area.FromSquareFeet(9.6),
        DryMatter = Fraction.FromPercent(25),
        Pairs = [.. pairs.Select(p => new ClippedPair { Inside = Mass.FromGrams(p.Inside), Outside = Mass.FromGrams(p.Outside) })],
    };

    /// <summary>Means 400 and 156 g wet, 25 % dry, factor 10.003: 1,000.3 lb/ac; use 61 % (hand sums).</summary>
    [Fact]
    public void Cages_give_yield_and_use_with_their_ranges()
    {
        var outcome = CageOutcome.Of(Clipping((380, 150), (420, 160), (400, 140), (390, 170), (410, 160)));
        Assert.Equal(1000.3, outcome.Yield.PoundsPerAcre, 0.1);
        Assert.Equal(61, outcome.UsePercent, 1e-9);
        Assert.Empty(outcome.Findings);
        // t of 4 degrees of freedom 2.776; standard deviation 15.811 g wet.
        Assert.Equal(2.776 * 15.811 / Math.Sqrt(5) * 0.25 * 10.003, outcome.YieldHigh!.Value.PoundsPerAcre - outcome.Yield.PoundsPerAcre, 0.05);
        Assert.True(outcome.UsePercentLow < 61 && outcome.UsePercentHigh > 61);
    }

    [Fact]
    public void Negative_use_is_reported_and_not_cut_and_one_cage_has_no_range()
    {
        var outcome = CageOutcome.Of(Clipping((100, 120)));
        Assert.Equal(-20, outcome.UsePercent, 1e-9);
        Assert.Null(outcome.UsePercentLow);
        Assert.Null(outcome.YieldHigh);
        Assert.Equal(["record-few-cages", "record-negative-use"], outcome.Findings.Select(f => f.Code));
        Assert.Throws<ArgumentException>(() => CageOutcome.Of(Clipping((0, 10))));
    }

    [Fact]
    public void Browse_is_told_by_kind_and_month_with_how_many_plants_it_rests_on()
    {
        BrowseEntry Seen(int month, params int[] plants) => new() { On = Books.Day(2025, month, 5), Plot = Books.North, Kind = Books.Kind("winter oats"), PlantsByClass = [.. plants] };
        var book = PlotBook.Empty.With("a", Seen(11, 5, 10, 20, 10, 3, 2), Seen(12, 30, 0, 0, 0, 0, 0), Seen(12, 12, 1, 0, 0, 0, 0), new CameraEntry { On = Books.Day(2025, 11, 20), Plot = Books.North, Days = 14, Images = 280 });
        var months = BrowseByMonth.Of(book, Books.North);
        Assert.Equal([(11, 50), (12, 43)], months.Months.Select(m => (m.Month, m.Plants)));
        Assert.Equal(31.8, months.Months[0].UsePercent, 1e-9);
        Assert.Equal([12], months.MonthsThatFedNothing);
        Assert.Equal(20, months.PicturesPerDay(11));
        Assert.Null(months.PicturesPerDay(12));
        Assert.Equal(3, months.ShowWork().Length);
        Assert.Empty(months.Findings);
        Assert.Equal("record-few-plants", Assert.Single(BrowseByMonth.Of(book.With("a", Seen(1, 19, 0, 0, 0, 0, 0)), Books.North).Findings).Code);
    }

    private static int Poisson(Random random, double mean)
    {
        double limit = Math.Exp(-mean);
        double product = random.NextDouble();
        int count = 0;
        while (product > limit)
        {
            product *= random.NextDouble();
            count++;
        }

        return count;
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
