using PlotAgronomy.Records;

namespace PlotAgronomy.Tests.SampleConsole;

/// <summary>Two seasons of one plot by the console alone: weigh, plan, sheet, sow or wait, record, stand check, review. The third
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

    /// <summary>Here the plan is made. A plan file by hand stands for the questions of a beginning: with a command that asks them,
    /// it is called here and nothing else changes.</summary>
    private void MakeThePlan(string file) => File.WriteAllText(file, File.ReadAllText(ConsoleTests.Data("fall-blend.json")).Replace("\"use\": \"browsed\"", "\"place\": \"North Carolina\", \"use\": \"browsed\"", StringComparison.Ordinal));

    /// <summary>Eleven answers: all as planned, crimson clover comes up thinly.</summary>
    private static string Season(int year) =>
        $"yes\nyes\nyes\nyes\nyes\nyes\nyes\nyes\n0.8 in {year}-09-20\ncrimson clover: 6 5 7 5 6 8; forage radish: 0 0 0 0 0 0; spring oats: 7 6 8 5 7 6 in 1 ft2 {year}-10-05\n";

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
        Assert.Contains("Crimson clover", Say("", "history", first), StringComparison.Ordinal);
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
        Assert.Contains("by your own counts", Say("", "plan", third, "--width", "200"), StringComparison.Ordinal);
    }

    private static PlotPlan Read(string file) => PlanFile.Read(File.ReadAllText(file)).Plan!;

    private static int Questions(string file) => PlotAgronomy.Planning.PlotRecord.Of(Read(file).Solve(), PlotBook.Empty).Questions.Length;

    private static double Share(PlotPlan plan) => plan.Kinds.Single(k => k.Kind.Id == "crimson-clover").Share.ShareOfFullStand;

    private static double Rate(PlotPlan plan, string kind) => plan.Solve().Seed.Value.Kinds.Single(k => k.Planned.Kind.Id == kind).Bulk.Bulk.PoundsPerAcre;
}
