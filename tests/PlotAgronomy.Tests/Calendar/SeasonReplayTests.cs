using System.Globalization;
using System.Text;
using PlotAgronomy.Tests.House;

namespace PlotAgronomy.Tests.Calendar;

/// <summary>The page on the replay, made by counting.</summary>
[Trait("Category", "Slow")]
public class SeasonReplayTests
{
    private const int Resamples = 2000;

    private static readonly Lazy<List<Row>> Counted = new(() => [.. Count()]);

    private sealed record Row(string Rule, string Forecast, Dictionary<string, List<bool>> ByBlock, double DaysWaited)
    {
        internal int Trials => ByBlock.Values.Sum(v => v.Count);

        internal int Successes => ByBlock.Values.Sum(v => v.Count(s => s));

        internal double Share => (double)Successes / Trials;
    }

    [Fact]
    public void The_page_on_the_replay_is_current() => GeneratedDocsTests.AssertCurrent("docs/season-replay.md", Page());

    /// <summary>With a perfect forecast no rule can do worse by rain than sowing blind on the same days.</summary>
    [Fact]
    public void With_perfect_forecasts_waiting_for_rain_never_loses_against_a_fixed_date()
    {
        var rows = Counted.Value;
        double blind = rows.Single(r => r.Rule == "fixed date").Share;
        Assert.All(rows.Where(r => r.Forecast == "perfect"), r => Assert.True(r.Share >= blind, $"{r.Rule}: {r.Share} against {blind}"));
    }

    [Fact]
    public void The_replay_judges_by_observed_rain_alone()
    {
        var replay = new SeasonReplay();
        Assert.True(replay.Succeeds(new(2013, 6, 1)));
        Assert.Equal(64, SeasonReplay.Starts.Count());
        Assert.Contains(SeasonReplay.Starts, s => !replay.Succeeds(s.Ready));
    }

    private static IEnumerable<Row> Count()
    {
        var replay = new SeasonReplay();
        yield return Run("fixed date", "none", ready => [SeasonReplay.FixedDate(ready)], replay);
        yield return Run("first half inch told", "perfect", ready => [replay.FirstHalfInch(ready, null)], replay);
        yield return Run("this room's outlook", "perfect", ready => [replay.Outlook(ready, null)], replay);
        yield return Run("first half inch told", "of skill", ready => Seeded(s => replay.FirstHalfInch(ready, s)), replay);
        yield return Run("this room's outlook", "of skill", ready => Seeded(s => replay.Outlook(ready, s)), replay);
    }

    private static IEnumerable<DateOnly> Seeded(Func<int, DateOnly> sown) => Enumerable.Range(1, SeasonReplay.Seeds).Select(sown);

    private static Row Run(string rule, string forecast, Func<DateOnly, IEnumerable<DateOnly>> sow, SeasonReplay replay)
    {
        var byBlock = new Dictionary<string, List<bool>>();
        var waited = new List<int>();
        foreach (var (block, ready) in SeasonReplay.Starts)
        {
            foreach (var sown in sow(ready))
            {
                waited.Add(sown.DayNumber - ready.DayNumber);
                if (!byBlock.TryGetValue(block, out var all))
                {
                    byBlock[block] = all = [];
                }

                all.Add(replay.Succeeds(sown));
            }
        }

        return new(rule, forecast, byBlock, waited.Average());
    }

    private static string Page()
    {
        var rows = Counted.Value;
        var blind = rows[0];
        var page = new StringBuilder();
        page.Append("# A season sown again: does a forecast help?\n\n");
        page.Append("Four years of a city's days (New York, 2012 to 2015, daily data of the US weather service, public domain) are sown again by three rules and judged by the rain that was observed, nothing else. This page is made by a test that counts.\n\n");
        page.Append("## Fixed beforehand\n\n| what | value | where from |\n|---|---|---|\n");
        page.Append("| a sowing succeeds with at least | 0.5 in of rain in the 14 days from sowing | WX-PFI, read |\n");
        page.Append(Line($"| and no dry gap of more than | {SeasonReplay.LongestDryGap} days in them | moisture expected within 10 days, read |\n"));
        page.Append("| a day is wet from | 0.01 in on | WX-AMS, read |\n");
        page.Append(Line($"| the owner waits at most | {SeasonReplay.MostDaysWaited} days, and then sows | practice |\n"));
        page.Append(Line($"| a forecast reaches | {SeasonReplay.Horizon} days, highs and lows as observed | practice |\n"));
        page.Append("| sown | medium red clover, pressed in, silt loam | practice |\n");
        page.Append(Line($"| skill of a forecast of rain, day 1 to {SeasonReplay.Horizon} | {string.Join(", ", SeasonReplay.Skill.Select(s => Print(s, 2)))} of the climate's uncertainty taken away | from memory of published verifications; none was seen |\n\n"));
        page.Append(Line($"An owner is ready every fifth day from 1 April to 1 May and from 1 August to 10 September: {blind.Trials} starts in {blind.ByBlock.Count} seasons. Forecasts of skill are drawn {SeasonReplay.Seeds} times from numbered seeds. They are reliable: of all days told 40 %, four in ten are wet. Their climate is that of the same four years.\n\n"));
        page.Append("## Counted\n\n| rule | forecast | sowings | succeed | 95 % interval | days waited | more than the fixed date | 95 % interval |\n|---|---|---:|---:|---|---:|---:|---|\n");
        foreach (var row in rows)
        {
            var (low, high) = Interval(row, null);
            string gain = row == blind ? "-" : $"{Print(100 * (row.Share - blind.Share), 0)} points";
            string between = row == blind ? "-" : Between(Interval(row, blind));
            page.Append(Line($"| {row.Rule} | {row.Forecast} | {row.Trials} | {Print(100 * row.Share, 0)} % | {Between((low, high))} | {Print(row.DaysWaited, 1)} | {gain} | {between} |\n"));
        }

        page.Append("\nStarts a few days apart see the same rain, so the intervals draw whole seasons with replacement, eight of them, and not single sowings. Eight seasons of one rainy city are few: the intervals are wide, and say nothing of dry country, of seed that is washed away or eaten, or of any other year.\n\n");
        page.Append(Reading(rows, blind));
        return page.ToString();
    }

    /// <summary>What the numbers say, gain or none.</summary>
    private static string Reading(List<Row> rows, Row blind)
    {
        var page = new StringBuilder("## What it says\n\n");
        foreach (var row in rows.Where(r => r != blind))
        {
            var (low, high) = Interval(row, blind);
            string verdict = low > 0 ? "better than the fixed date" : high < 0 ? "worse than the fixed date" : "no gain over the fixed date that these years can show";
            page.Append(Line($"- {row.Rule}, forecast {row.Forecast}: {verdict}.\n"));
        }

        var ours = rows[^1];
        var rival = rows[^2];
        var (from, to) = Interval(ours, rival);
        string against = from > 0 ? "does better than" : to < 0 ? "does worse than" : "cannot be told from";
        page.Append(Line($"- With forecasts of skill this room's outlook {against} the first half inch told: {Print(100 * (ours.Share - rival.Share), 0)} points, {Between((from, to))}.\n"));
        return page.ToString();
    }

    /// <summary>Whole seasons drawn with replacement, by a numbered seed; of a difference the same seasons for both.</summary>
    private static (double Low, double High) Interval(Row row, Row? against)
    {
        var random = new Random(20120401);
        string[] blocks = [.. row.ByBlock.Keys.Order(StringComparer.Ordinal)];
        var drawn = new List<double>();
        for (int i = 0; i < Resamples; i++)
        {
            var chosen = blocks.Select(_ => blocks[random.Next(blocks.Length)]).ToList();
            drawn.Add(Share(row, chosen) - (against is null ? 0 : Share(against, chosen)));
        }

        drawn.Sort();
        return (drawn[(int)(0.025 * Resamples)], drawn[(int)(0.975 * Resamples)]);
    }

    private static double Share(Row row, List<string> blocks)
    {
        var all = blocks.SelectMany(b => row.ByBlock[b]).ToList();
        return (double)all.Count(s => s) / all.Count;
    }

    private static string Between((double Low, double High) interval) => $"{Print(100 * interval.Low, 0)} to {Print(100 * interval.High, 0)}";

    private static string Print(double number, int decimals) => number.ToString($"F{decimals}", CultureInfo.InvariantCulture);

    private static string Line(FormattableString text) => FormattableString.Invariant(text);
}
