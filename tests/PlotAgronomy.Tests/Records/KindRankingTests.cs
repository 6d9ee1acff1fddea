using System.Collections.Immutable;
using FsCheck;
using FsCheck.Xunit;
using PlotAgronomy.Records;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Tests.Records;

public class KindRankingTests
{
    internal static PlotBook Stands(params (string Kind, int Year, string Plot, int PerHoop)[] stands)
    {
        var book = PlotBook.Empty;
        foreach (var (kind, year, plot, perHoop) in stands)
        {
            var sown = Books.Day(year, 9, 1);
            book = book.With(
                "a",
                new SowingEntry
                {
                    On = sown,
                    Plot = plot,
                    Area = Area.FromAcres(1),
                    Method = SowingMethod.Broadcast,
                    Lots = [new() { Lot = new() { Label = "a", Kind = Books.Kind(kind), Analysis = SeedAnalysis.FromFractions(Fraction.One, Fraction.One), OwnSeedCount = SeedCount.FromSeedsPerPound(43_560) }, Used = BulkSeedMass.FromPounds(50) }],
                },
                new CountEntry { On = sown.AddDays(25), Plot = plot, Kind = Books.Kind(kind), Hoop = Area.FromSquareFeet(1), Plants = [perHoop, perHoop, perHoop, perHoop, perHoop, perHoop] });
        }

        return book;
    }

    /// <summary>One lucky stand of 90 % does not go before four of 70 %: three like it draw the single one down.</summary>
    [Fact]
    public void A_kind_that_did_well_once_is_drawn_toward_the_mean_more_than_one_seen_often()
    {
        var ranking = KindRanking.Of(
            Stands(("winter oats", 2021, "n", 35), ("winter oats", 2022, "n", 34), ("winter oats", 2023, "s", 36), ("winter oats", 2024, "s", 35), ("crimson clover", 2024, "n", 45), ("forage turnip", 2023, "n", 10), ("forage turnip", 2022, "s", 12)),
            RankedMeasure.Emergence);
        var oats = ranking.Kinds.Single(k => k.Kind!.Id == "oats-winter");
        var clover = ranking.Kinds.Single(k => k.Kind!.Id == "crimson-clover");
        Assert.Equal((4, 2, 4), (oats.Observations, oats.Plots, oats.Years));
        Assert.Equal(0.7, oats.Mean, 1e-12);
        Assert.Equal(0.9, clover.Mean, 1e-12);
        Assert.True(Math.Abs(clover.Shrunk - clover.Mean) > Math.Abs(oats.Shrunk - oats.Mean));
        Assert.True(clover.StandardError > oats.StandardError);
        Assert.InRange(clover.Shrunk, ranking.MeanOfAll!.Value, clover.Mean);
        Assert.Equal("record-ranking-few", ranking.Findings.Single(f => f.Subject == clover.Name).Code);
        Assert.DoesNotContain(ranking.Findings, f => f.Subject == oats.Name);
        Assert.Equal(2 * ranking.Kinds.Length + ranking.Kinds.Count(k => k.MoreToTell is not null), ranking.ShowWork().Length);
    }

    /// <summary>By hand: with a usual spread within, one stand of 78 % is drawn far down to the mean of all, four of 76 % hardly.</summary>
    [Fact]
    public void The_best_is_the_best_after_it_was_drawn_toward_the_mean()
    {
        var ranking = KindRanking.Of(
            Stands(("winter oats", 2021, "n", 28), ("winter oats", 2022, "n", 48), ("winter oats", 2023, "s", 46), ("winter oats", 2024, "s", 30), ("crimson clover", 2024, "n", 39), ("forage turnip", 2023, "n", 2), ("forage turnip", 2022, "s", 22)),
            RankedMeasure.Emergence);
        Assert.Equal(["oats-winter", "crimson-clover", "forage-turnip"], ranking.Kinds.Select(k => k.Kind!.Id));
        Assert.True(ranking.Kinds[0].Mean < ranking.Kinds[1].Mean);
    }

    /// <summary>Hand algebra: 1.96 x 0.15 / 0.2 squared is 2.16, so three observations part a mean 0.2 from that of all; one is
    /// there, two more would tell. At 0.05 it is 34.6, thirty-four more; at 0.01 it is 864, more than anyone waits for.</summary>
    [Theory]
    [InlineData(0.7, 0.5, 2.1609)]
    [InlineData(0.45, 0.5, 34.5744)]
    [InlineData(0.51, 0.5, 864.36)]
    public void The_size_of_a_sample_that_tells_grows_with_the_square_of_how_near_the_means_are(double own, double all, double expected) =>
        Assert.Equal(expected, RecordMath.ObservationsToTell(1.96, own, all, 0.15 * 0.15), 1e-9 * expected + 1e-9);

    /// <summary>Two kinds seen once: the spread within is the usual one. Means 0.6 apart stand 0.3 from the mean of all (0.96, but
    /// fewer than three say little: two more), 0.2 apart 0.1 (8.6, eight more), 0.02 apart 0.01 (over fifty).</summary>
    [Theory]
    [InlineData(40, 10, 2, "2")]
    [InlineData(30, 20, 8, "8")]
    [InlineData(26, 25, null, "over 50")]
    public void How_many_more_would_tell_stands_beside_each_kind(int one, int two, int? more, string cell)
    {
        var ranking = KindRanking.Of(Stands(("winter oats", 2021, "n", one), ("crimson clover", 2022, "n", two)), RankedMeasure.Emergence);
        Assert.All(ranking.Kinds, k => Assert.Equal((more, cell), (k.MoreToTell, k.More)));
        Assert.Null(Assert.Single(KindRanking.Of(Stands(("winter oats", 2021, "n", one)), RankedMeasure.Emergence).Kinds).MoreToTell);
    }

    [Fact]
    public void A_kind_that_was_seen_often_and_stands_apart_needs_no_more()
    {
        var ranking = KindRanking.Of(Stands(("winter oats", 2021, "n", 45), ("winter oats", 2022, "n", 45), ("winter oats", 2023, "n", 45), ("crimson clover", 2022, "n", 5), ("crimson clover", 2023, "n", 5), ("crimson clover", 2024, "n", 5)), RankedMeasure.Emergence);
        Assert.All(ranking.Kinds, k => Assert.Equal((0, "none"), (k.MoreToTell!.Value, k.More)));
    }

    [Fact]
    public void What_was_seen_after_a_day_is_not_in_the_ranking_of_that_day()
    {
        var book = Stands(("winter oats", 2021, "n", 40), ("crimson clover", 2022, "n", 10));
        Assert.Equal("oats-winter", Assert.Single(KindRanking.UpTo(book, RankedMeasure.Emergence, Books.Day(2021, 12, 31)).Kinds).Kind!.Id);
    }

    [Fact]
    public void Where_kinds_differ_by_chance_only_there_is_no_best_one()
    {
        var ranking = KindRanking.Of(Stands(("winter oats", 2021, "n", 30), ("crimson clover", 2022, "n", 31), ("forage turnip", 2023, "n", 29)), RankedMeasure.Emergence);
        Assert.All(ranking.Kinds, k => Assert.Equal(ranking.MeanOfAll!.Value, k.Shrunk, 1e-12));
        Assert.Contains(ranking.Findings, f => f.Code == "record-ranking-alike");
        Assert.Empty(KindRanking.Of(PlotBook.Empty, RankedMeasure.Browse).Kinds);
    }

    /// <summary>Two groups of one: Q = d^2/(2v), scale = 1/v, so that between = d^2/2 - v (algebra by hand).</summary>
    [Theory]
    [InlineData(0.2, 0.8, 0.01)]
    [InlineData(0.45, 0.55, 0.02)]
    public void The_variance_between_two_groups_is_that_of_the_closed_form(double one, double two, double variance) =>
        Assert.Equal(Math.Max(0, ((two - one) * (two - one) / 2) - variance), Shrinkage.BetweenVariance([one, two], [variance, variance]), 1e-12);

    /// <summary>Drawn kinds of known worth, seen one to five times: what is expected of them misses the truth by less than their own
    /// means do.</summary>
    [Fact]
    public void Drawing_toward_the_mean_of_all_comes_nearer_the_truth()
    {
        var random = new Random(20261130);
        double own = 0;
        double shrunk = 0;
        for (int run = 0; run < 300; run++)
        {
            double[] truth = [.. Enumerable.Range(0, 10).Select(_ => 0.5 + (0.1 * Normal(random)))];
            ImmutableArray<ImmutableArray<double>> seen = [.. truth.Select(t => Enumerable.Range(0, 1 + random.Next(5)).Select(_ => t + (0.15 * Normal(random))).ToImmutableArray())];
            var all = new Shrinkage(seen);
            own += seen.Select((s, i) => Math.Pow(s.Average() - truth[i], 2)).Sum();
            shrunk += seen.Select((s, i) => Math.Pow(all.Shrunk(s.Average(), s.Length) - truth[i], 2)).Sum();
        }

        Assert.InRange(shrunk / own, 0.2, 0.8);
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    [Property]
    public bool A_shrunk_mean_lies_between_its_own_and_that_of_all_and_more_observations_hold_it_better(NonEmptyArray<byte> one, NonEmptyArray<byte> two, NonEmptyArray<byte> three)
    {
        ImmutableArray<ImmutableArray<double>> groups = [.. new[] { one, two, three }.Select(g => g.Get.Take(6).Select(b => b / 255.0).ToImmutableArray())];
        var all = new Shrinkage(groups);
        return groups.All(g => Between(all.Shrunk(g.Average(), g.Length), g.Average(), all.MeanOfAll)) && all.Weight(2) <= all.Weight(3) && all.StandardError(5) <= all.StandardError(1) + 1e-12;
    }

    private static bool Between(double value, double one, double two) => value >= Math.Min(one, two) - 1e-12 && value <= Math.Max(one, two) + 1e-12;
}
