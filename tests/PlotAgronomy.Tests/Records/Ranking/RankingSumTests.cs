using System.Collections.Immutable;
using PlotAgronomy.Records;

namespace PlotAgronomy.Tests.Records;

/// <summary>Two kinds seen once, at 0.8 and 0.2, with the usual spread of 0.15: between 0.6 squared / 2 - 0.0225 = 0.1575, weight
/// 0.1575 / 0.18 = 0.875 (hand algebra).</summary>
public class RankingSumTests
{
    private static KindRanking Two => KindRanking.Of(
        KindRankingTests.Stands(("winter oats", 2021, "n", 40), ("crimson clover", 2022, "n", 10)),
        RankedMeasure.Emergence
    );

    [Fact]
    public void Means_are_drawn_by_their_weight_and_keep_its_error()
    {
        Assert.Equal(0.5, Two.MeanOfAll!.Value, 1e-12);
        Assert.Equal(0.5 + (0.875 * 0.3), Two.Kinds[0].Shrunk, 1e-12);
        Assert.Equal(0.5 - (0.875 * 0.3), Two.Kinds[1].Shrunk, 1e-12);
        // The mean of all rests on two means of variance 0.18: 0.09.
        Assert.Equal(Math.Sqrt((0.875 * 0.0225) + (0.125 * 0.125 * 0.09)), Two.Kinds[0].StandardError, 1e-12);
    }

    [Fact]
    public void The_weight_the_drawn_mean_and_how_many_would_tell_are_laid_out()
    {
        var work = Two.ShowWork();
        Assert.Equal("0.1575 / (0.1575 + 0.0225 / 1) = 0.875", work[0].Numbers);
        Assert.StartsWith("0.5 + 0.875 x (0.8 - 0.5) = 0.76", work[1].Numbers, StringComparison.Ordinal);
        Assert.Equal("pow(1.96 / (0.8 - 0.5), 2) x 0.0225 = 1", work[2].Numbers);
        Assert.Equal(6, work.Length);
    }

    [Fact]
    public void The_spread_within_is_pooled_with_the_usual_one_counted_twice()
    {
        // Off 0.7 by 0.1 twice: (2 x 0.0225 + 0.02) / (2 + 1).
        ImmutableArray<ImmutableArray<double>> groups = [[0.8, 0.6], [0.2]];
        Assert.Equal(0.065 / 3, new Shrinkage(groups).WithinVariance, 1e-12);
    }

    [Fact]
    public void One_group_alone_has_nothing_between_and_no_number_that_would_tell()
    {
        Assert.Equal(0, Shrinkage.BetweenVariance([0.4], [0.01]));
        Assert.Null(new Shrinkage([[0.4, 0.5]]).MoreToTell(0.4, 2));
    }

    [Fact]
    public void A_stand_that_was_counted_too_late_is_no_observation()
    {
        var book = KindRankingTests.Stands(("winter oats", 2021, "n", 40));
        Assert.Single(Observation.Of(book, RankedMeasure.Emergence));
        var late = PlotBook.Empty.With(
            "a",
            [.. book.Current.Select(e => (e is CountEntry ? e with { On = e.On.AddDays(30) } : e) with { Id = null })]
        );
        Assert.Empty(Observation.Of(late, RankedMeasure.Emergence));
    }

    [Fact]
    public void Browse_is_ranked_as_a_part_of_one_and_one_without_a_kind_is_none()
    {
        var seen = new BrowseEntry
        {
            On = Books.Day(2025, 11, 5),
            Plot = Books.North,
            Kind = Books.Kind("winter oats"),
            PlantsByClass = [5, 10, 20, 10, 3, 2],
        };
        var book = PlotBook.Empty.With("a", seen, seen with { Kind = null });
        Assert.Equal(0.318, Assert.Single(KindRanking.Of(book, RankedMeasure.Browse).Kinds).Mean, 1e-12);
    }
}
