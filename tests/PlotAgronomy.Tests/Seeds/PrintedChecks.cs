using System.Globalization;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Seeds;

/// <summary>What named publications print, held against what the library makes of all of them.</summary>
public class PrintedChecks
{
    private const string Rates = "Seeds/worked-print-rates.csv";
    private const string Days = "Seeds/worked-print-days.csv";
    private const string Counts = "Seeds/worked-print-counts.csv";

    public static TheoryData<string> RateIds => WorkedExamples.Ids(Rates);

    public static TheoryData<string> DayIds => WorkedExamples.Ids(Days);

    public static TheoryData<string> CountIds => WorkedExamples.Ids(Counts);

    /// <summary>Rates that do not make the range themselves: of another purpose, without a method, or set aside.</summary>
    [Theory, MemberData(nameof(RateIds))]
    public void A_printed_rate_is_accepted_or_refused_by_the_publications_that_speak(string id)
    {
        var row = WorkedExamples.Find(Rates, id);
        var kind = KindCatalog.Standard.Find(row.Text("kind"));
        var method = row.Text("method") == "drilled" ? SowingMethod.Drilled : SowingMethod.Broadcast;
        var rate = PureLiveSeedRate.FromRate(ApplicationRate.FromPoundsPerAcre(row.Number("rate")), method);
        var codes = RateCheck.Against(kind, rate).Findings.Select(f => f.Code).ToList();
        string said = codes.Contains("seed-rate-above-range") ? "above" : codes.Contains("seed-rate-below-range") ? "below" : "inside";
        WorkedExamples.Note(row, said);
        Assert.Equal(row.Text("expected"), said);
    }

    [Theory, MemberData(nameof(DayIds))]
    public void A_day_is_open_where_a_publication_gives_days_that_hold_it(string id)
    {
        var row = WorkedExamples.Find(Days, id);
        var day = DateOnly.ParseExact("2026-" + row.Text("day"), "yyyy-MM-dd", CultureInfo.InvariantCulture);
        var windows = PlantingWindow.Published(KindCatalog.Standard.Find(row.Text("kind")), PlantingRegion.Find(row.Text("region")));
        string said = windows.Any(w => w.Rule == PlantingRule.Window && w.Allows(day)) ? "open" : "closed";
        WorkedExamples.Note(row, said);
        Assert.Equal(row.Text("expected"), said);
    }

    [Theory, MemberData(nameof(CountIds))]
    public void A_printed_count_is_near_the_typical_one(string id)
    {
        var row = WorkedExamples.Find(Counts, id);
        var count = KindCatalog.Standard.Find(row.Text("kind")).RequireSeedCount();
        Assert.InRange(row.Number("expected"), count.SeedsPerPoundLow, count.SeedsPerPoundHigh);
        WorkedExamples.AssertMatches(row, count.SeedsPerPound);
    }
}
