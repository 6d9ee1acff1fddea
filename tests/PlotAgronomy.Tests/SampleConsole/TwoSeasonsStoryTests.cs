using PlotAgronomy.Records;

namespace PlotAgronomy.Tests.SampleConsole;

/// <summary>Two seasons of one plot by the console alone: weigh, start, probe, start again, sheet, sow or wait, record, stand check,
/// review. The third
/// plan differs because of what the book has, and says why.</summary>
public sealed class TwoSeasonsStoryTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("plot-story").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string In(string name) => Path.Combine(folder, name);

    private static string Say(string answers, params string[] args)
    {
        var (exit, output, error) = BookCommandTests.Typed(answers, args);
        Assert.Equal((0, ""), (exit, error));
        return output;
    }

    /// <summary>Two sittings of <c>start</c>, an answer a line: what the tape and the eyes tell, and what the report and the bags
    /// do. Between them the probe.</summary>
    private void MakeThePlan(string file)
    {
        string first = Say(FirstSitting, "start", file);
        Assert.Contains("keeps what you answered", first, StringComparison.Ordinal);
        Assert.Contains("cores", Say("", "plan", file), StringComparison.Ordinal);
        string second = Say(SecondSitting, "start", file);
        Assert.DoesNotContain("What do you call the plot?", second, StringComparison.Ordinal);
        Assert.Contains("is written", second, StringComparison.Ordinal);
    }

    private const string FirstSitting = "Fern Bottom\nNorth Carolina\n\n182 by 140\nsandy loam\n5\nstop\n";

    /// <summary>A blank line leaves a question open or ends a list.</summary>
    private const string SecondSitting = """
        4

        the state's own laboratory
        Mar 14, 2026
        pH 5.6, Ac 1.7, CEC 8.4, HM 0.6, W/V 1.12, P 34 North Carolina index Mehlich-3, K 41 North Carolina index Mehlich-3


        spring oats 25 %, Austrian winter pea 20 %, crimson clover 25 %, ladino 10 %, forage radish 10 %, chicory 10 %
        Sep 12, 2026
        1
        6 in
        Apr 4, 2026
        spring oats, 50 lb, $19, pure 98, germ 88, tested 5/26, lot OA-6
        Austrian winter pea, 50 lb, $46, pure 99, germ 84, hard 3, tested 6/26, lot WP-2
        crimson clover, 25 lb, $58, pure 98.5, germ 78, hard 9, tested 6/26, lot CC-9
        ladino, 5 lb, $32, pure 65.5, germ 80, hard 10, coating 34, tested 4/26, lot LD-1
        forage radish, 10 lb, $28, pure 99, germ 90, tested 5/26, lot RD-4
        chicory, 2 lb, $22, pure 97, germ 82, tested 3/26, lot CH-3

        pelleted dolomite, CCE 92, 1960 lb equal a ton, 40 lb, $5.60
        ground limestone, CCE 88, 2080 lb equal a ton, 50 lb, $4.90

        10-20-20, 50 lb, $24
        0-46-0, 50 lb, $36
        0-0-60, 50 lb, $27

        shoulder spreader, 14 ft
        3 gal
        spring oats, gate 6, 2.6 lb, 200 ft, 52 s
        crimson clover, gate 2, 0.42 lb, 200 ft, 50 s


        """;

    /// <summary>Eleven answers: all as planned, crimson clover comes up thinly.</summary>
    private static string Season(int year) =>
        $"yes\nyes\nyes\nyes\nyes\nyes\nyes\nyes\n0.8 in {year}-09-20\ncrimson clover: 3 2 4 2 3 3; forage radish: 0 0 0 0 0 0; spring oats: 7 6 8 5 7 6 in 1 ft2 {year}-10-05\n";

    [Fact]
    public void After_two_seasons_the_plan_differs_because_of_the_book_and_says_why()
    {
        // The spreader is weighed, the plan made, its sheet printed, a forecast weighed.
        string setting = Say("", "calibrate", "--rate", "8 lb/ac", "--swath", "14 ft", "--caught", "0.4 lb", "--catch-time", "30 s", "--pace-time", "23 s");
        Assert.NotEqual("", setting);
        string first = In("2026.json");
        MakeThePlan(first);
        Assert.Contains("ground limestone", Say("", "plan", first), StringComparison.Ordinal);
        Assert.Contains("Sow", Say("60 0.4 78 55\n70 0.5 76 56\n30 0.1 78 55\n\n", "when", first, "--zone", "America/New_York"), StringComparison.OrdinalIgnoreCase);

        // The first season: ten answers, a look at the stand, a review that writes the next plan.
        Say(Season(2026), "record", first);
        string stand = Flat(Say("", "history", first, "--width", "120"));
        Assert.Contains("Crimson clover: 16 % of the living seed is up, thicken it", stand, StringComparison.Ordinal);
        Assert.Contains("To thicken Crimson clover, still in time on ", stand, StringComparison.Ordinal);
        string second = In("2027.json");
        string told = Say("", "review", "2026", "--from", first, "--plan", second, "--all");
        Assert.Contains("lime since the sample", told, StringComparison.Ordinal);
        Assert.DoesNotContain("rate of Crimson clover", told, StringComparison.Ordinal);

        // The second season goes the same way; no lime is bought again.
        Assert.DoesNotContain("buy.lime", Say("", "plan", second), StringComparison.Ordinal);
        Say(Season(2027).Replace("yes\n", "", StringComparison.Ordinal).Insert(0, string.Concat(Enumerable.Repeat("yes\n", Questions(second) - 2))), "record", second);
        string third = In("2028.json");
        told = Say("", "review", "2027", "--from", second, "--plan", third, "--all");

        // What differs, each with its reason and its entries.
        var (was, next) = (Read(first), Read(third));
        Assert.Contains("rate of Crimson clover: usual becomes for", told, StringComparison.Ordinal);
        Assert.Contains("Forage radish: sown becomes left out", told, StringComparison.Ordinal);
        Assert.Contains("Brassicas stood on Fern Bottom in 2026 and 2027", told, StringComparison.Ordinal);
        Assert.DoesNotContain(next.Kinds, k => k.Kind.Id == "forage-radish");
        Assert.Equal(1.5, Rate(next, "crimson-clover") / Rate(was, "crimson-clover") / (Share(next) / Share(was)), 0.02);
        Assert.Equal(new DateOnly(2028, 9, 12), next.PlantingDate);
        var book = PlotBookFolder.Open(In("plot-book"), "reader").Read();
        Assert.Empty(book.Findings);
        foreach (string id in told.Split('\n').Where(l => l.StartsWith("  Entries: ", StringComparison.Ordinal)).SelectMany(l => l["  Entries: ".Length..].Split(", ")))
        {
            Assert.Contains(book.Current, e => e.Id == id);
        }

        // The third plan is a plan like any other, and its sheet says what it owes to the book.
        Assert.Contains("that would tell a kind from the mean of all", told, StringComparison.Ordinal);
        Assert.Contains("by your own counts", Say("", "plan", third, "--width", "200"), StringComparison.Ordinal);
    }

    private static string Flat(string text) => string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    private static PlotPlan Read(string file) => PlanFile.Read(File.ReadAllText(file)).Plan!;

    private static int Questions(string file) => PlotAgronomy.Planning.PlotRecord.Of(Read(file).Solve(), PlotBook.Empty).Questions.Length;

    private static double Share(PlotPlan plan) => plan.Kinds.Single(k => k.Kind.Id == "crimson-clover").Share.ShareOfFullStand;

    private static double Rate(PlotPlan plan, string kind) => plan.Solve().Seed.Value.Kinds.Single(k => k.Planned.Kind.Id == kind).Bulk.Bulk.PoundsPerAcre;
}
