using PlotAgronomy.Records;
using UnitsNet;

namespace PlotAgronomy.Tests.Records;

public class NextYearTests
{
    private static readonly DateOnly Winter = Books.Day(2026, 1, 10);

    private static IEnumerable<string> Suggested(PlotBook book) => NextYear.Of(book, "n", Area.FromAcres(1), Winter).Findings.Select(f => f.Code);

    [Fact]
    public void A_kind_that_failed_twice_is_left_out_and_once_is_weather()
    {
        var once = KindRankingTests.Stands(("winter oats", 2024, "n", 2));
        var twice = KindRankingTests.Stands(("winter oats", 2024, "n", 2), ("winter oats", 2025, "n", 2));
        var elsewhere = KindRankingTests.Stands(("winter oats", 2024, "n", 2), ("winter oats", 2025, "s", 2));
        Assert.DoesNotContain("record-failed-twice", Suggested(once));
        Assert.Contains("record-failed-twice", Suggested(twice));
        Assert.DoesNotContain("record-failed-twice", Suggested(elsewhere));
    }

    /// <summary>Three stands of 40 %: usual 60 % over the own 40 % is 1.5 times the rate.</summary>
    [Fact]
    public void Own_emergence_changes_the_rate_once_it_was_seen_often_enough()
    {
        var book = KindRankingTests.Stands(("crimson clover", 2023, "n", 20), ("crimson clover", 2024, "n", 20), ("crimson clover", 2025, "n", 20));
        var told = Assert.Single(NextYear.Of(book, "n", Area.FromAcres(1), Winter).Findings, f => f.Code == "record-own-emergence");
        Assert.Equal("1.5", told.Values.Single(v => v.Name == "factor").Text);
        Assert.Equal("3", told.Values.Single(v => v.Name == "count").Text);
        Assert.DoesNotContain("record-own-emergence", Suggested(KindRankingTests.Stands(("crimson clover", 2025, "n", 20))));
        Assert.DoesNotContain("record-own-emergence", Suggested(KindRankingTests.Stands(("crimson clover", 2024, "n", 30), ("crimson clover", 2025, "n", 30))));
    }

    [Fact]
    public void A_family_of_annuals_two_years_running_gives_way_and_one_with_a_year_between_stays()
    {
        Assert.Contains("record-rotate", Suggested(KindRankingTests.Stands(("forage turnip", 2024, "n", 30), ("kale", 2025, "n", 30), ("forage radish", 2025, "n", 30), ("forage radish", 2024, "n", 30))));
        Assert.DoesNotContain("record-rotate", Suggested(KindRankingTests.Stands(("forage radish", 2023, "n", 30), ("forage radish", 2025, "n", 30))));
        Assert.DoesNotContain("record-rotate", Suggested(KindRankingTests.Stands(("forage radish", 2024, "n", 30), ("crimson clover", 2025, "n", 30))));
    }

    /// <summary>Cereals and clovers may follow themselves; what stays in the ground are the pests of brassicas.</summary>
    [Fact]
    public void Cereals_two_years_running_are_no_reason_to_rotate() =>
        Assert.DoesNotContain("record-rotate", Suggested(KindRankingTests.Stands(("cereal rye", 2024, "n", 30), ("winter oats", 2025, "n", 30), ("crimson clover", 2024, "n", 30), ("crimson clover", 2025, "n", 30))));

    /// <summary>Poor stands of another plot, and stands that failed, say nothing of the rate here.</summary>
    [Fact]
    public void The_rate_rests_on_stands_of_this_plot_that_did_not_fail()
    {
        Assert.DoesNotContain("record-own-emergence", Suggested(KindRankingTests.Stands(("crimson clover", 2023, "s", 18), ("crimson clover", 2024, "s", 18), ("crimson clover", 2024, "n", 30), ("crimson clover", 2025, "n", 30))));
        Assert.DoesNotContain("record-own-emergence", Suggested(KindRankingTests.Stands(("winter oats", 2024, "n", 2), ("winter oats", 2025, "n", 2))));
        Assert.Contains("record-failed-twice", Suggested(KindRankingTests.Stands(("winter oats", 2024, "n", 2), ("winter oats", 2025, "n", 2))));
    }

    [Fact]
    public void A_month_that_fed_nothing_names_kinds_of_use_then()
    {
        var book = PlotBook.Empty.With("a", new BrowseEntry { On = Books.Day(2025, 12, 20), Plot = "n", PlantsByClass = [40, 1, 0, 0, 0, 0] });
        var told = Assert.Single(NextYear.Of(book, "n", Area.FromAcres(1), Winter).Findings, f => f.Code == "record-fed-nothing");
        Assert.Equal("December", told.Values.Single(v => v.Name == "month").Text);
        Assert.NotEqual("", told.Values.Single(v => v.Name == "kinds").Text);
    }

    private static PlotBook Clover(string kind, int sown, double? cover, string seen = "orchard grass", int? since = null)
    {
        var book = KindRankingTests.Stands((kind, sown, "n", 30));
        book = since is { } year ? KindRankingTests.Stands((kind, sown, "n", 30), ("cereal rye", year, "n", 30)) : book;
        return book.With("w", new WeedEntry { On = Books.Day(2025, 10, 1), Plot = "n", Seen = seen, Cover = cover is { } part ? Fraction.FromPercent(part) : null });
    }

    /// <summary>From 30 % of the ground and the second year on (practice); below, younger, of annual clover, of other weeds, or
    /// with a grain sown since it is not told.</summary>
    [Theory]
    [InlineData("ladino", 2023, 30.0, "orchard grass", null, true)]
    [InlineData("ladino", 2023, 29.9, "orchard grass", null, false)]
    [InlineData("ladino", 2023, null, "orchard grass", null, false)]
    [InlineData("ladino", 2024, 60.0, "orchard grass", null, false)]
    [InlineData("crimson clover", 2023, 60.0, "orchard grass", null, false)]
    [InlineData("ladino", 2023, 60.0, "pigweed", null, false)]
    [InlineData("ladino", 2023, 60.0, "orchard grass", 2024, false)]
    public void Old_clover_full_of_grass_gives_way_for_a_year(string kind, int sown, double? cover, string seen, int? since, bool isTold)
    {
        var told = NextYear.Of(Clover(kind, sown, cover, seen, since), "n", Area.FromAcres(1), Winter).Suggestions.Where(s => s.Why.Code == "record-old-clover").ToList();
        Assert.Equal(isTold, told.Count == 1);
        if (isTold)
        {
            Assert.Equal([typeof(SowingEntry), typeof(WeedEntry)], told[0].From.Select(e => e.GetType()));
            Assert.Contains("30 %", told[0].Why.Text, StringComparison.Ordinal);
            Assert.Contains("nitrogen", told[0].Why.Text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Lime_at_work_is_told_and_an_empty_book_asks()
    {
        var book = PlotBook.Empty.With("a", new LimeEntry { On = Books.Day(2025, 11, 1), Plot = "n", Material = Books.Lime, Loads = [SpreadLoad.FromWeight(Mass.FromPounds(500))] });
        Assert.Contains("record-lime-at-work", Suggested(book));
        var empty = NextYear.Of(PlotBook.Empty, "n", Area.FromAcres(1), Winter);
        Assert.Empty(empty.Findings);
        Assert.Equal(["record-ask-report", "record-ask-lime-need"], empty.Questions.Select(q => q.Code));
    }
}
