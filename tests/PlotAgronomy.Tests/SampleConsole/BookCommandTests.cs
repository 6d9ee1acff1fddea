using PlotAgronomy.Records;
using PlotAgronomy.Sample;

namespace PlotAgronomy.Tests.SampleConsole;

/// <summary><c>record</c>, <c>history</c> and <c>review</c>, run in process in a folder of their own.</summary>
public sealed class BookCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("plot-book").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    internal static (int Exit, string Out, string Error) Typed(string answers, params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        int exit = Program.Run(args, new ConsoleStreams { In = new StringReader(answers), Out = output, Error = error, Interactive = false });
        return (exit, output.ToString().ReplaceLineEndings("\n"), error.ToString().ReplaceLineEndings("\n"));
    }

    private string Plan(string name = "fall-blend.json")
    {
        string copy = Path.Combine(folder, name);
        File.Copy(ConsoleTests.Data(name), copy, overwrite: true);
        return copy;
    }

    private PlotBook Book() => PlotBookFolder.Open(Path.Combine(folder, "plot-book"), "reader").Read();

    private const string AWholeSeason =
        "yes\n2 bags 2026-09-10\nnone\nyes\n1 lb left, 2 passes, packed\nyes\nyes\ngate 3, 30 s for 100 ft\n0.8 in 2026-09-20\ncrimson clover: 19 25 14 22 17; spring oats: 8 9 7 6 8 in 1 ft2 2026-10-05\n";

    /// <summary>Ten blanks on the sheet of the demo: ten answers fill the book of the season.</summary>
    [Fact]
    public void Ten_answers_write_a_whole_season_beside_the_plan_and_say_where()
    {
        var (exit, output, error) = Typed(AWholeSeason, "record", Plan());
        Assert.Equal((0, ""), (exit, error));
        Assert.Contains($"written to {Path.Combine(folder, "plot-book")}.", output, StringComparison.Ordinal);
        var book = Book();
        Assert.Empty(book.Findings);
        Assert.Equal(100, book.Current.OfType<FertilizerEntry>().Single(f => f.Product.Name == "10-20-20").Weight.Pounds, 1e-9);
        Assert.Equal(new DateOnly(2026, 9, 10), book.Current.OfType<FertilizerEntry>().First(f => f.Product.Name == "10-20-20").On);
        Assert.DoesNotContain(book.Current.OfType<FertilizerEntry>(), f => f.Product.Name == "muriate of potash");
        Assert.Contains(book.Current.OfType<NoteEntry>(), n => n.Note!.StartsWith("Not done: Fertilizer spread, muriate of potash", StringComparison.Ordinal));
        Assert.Equal(2, book.Current.OfType<SowingEntry>().Count());
        Assert.Equal((2, true), (book.Current.OfType<SowingEntry>().First().Passes, book.Current.OfType<SowingEntry>().First().IsPacked!.Value));
        Assert.Equal(0.8, book.Current.OfType<RainEntry>().Single().Amount.Inches, 1e-9);
        Assert.Equal(["Crimson clover", "Spring oats"], book.Current.OfType<CountEntry>().Select(c => c.Kind!.ShortName).Order(StringComparer.Ordinal));
    }

    /// <summary>What is left in the hopper is taken off the mixture, each kind by its part of it.</summary>
    [Fact]
    public void Seed_that_came_back_is_taken_off_each_kind_by_its_part()
    {
        string plan = Plan();
        Typed("\n\n\n\nyes\n", "record", plan);
        var asPlanned = Book().Current.OfType<SowingEntry>().Single();
        Typed("", "record", plan, "instead", asPlanned.Id!, "seed", "spring oats 14 lb", asPlanned.On.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        var corrected = Book().Current.OfType<SowingEntry>().Single();
        Assert.Equal(asPlanned.Id, corrected.Corrects);
        Assert.Equal(14, corrected.Lots.Single(l => l.Lot.Kind.Id == "oats-spring").Used.Pounds, 1e-9);
        Assert.Equal(
            asPlanned.Lots.Where(l => l.Lot.Kind.Id != "oats-spring").Select(l => l.Used.Pounds).Order(),
            corrected.Lots.Where(l => l.Lot.Kind.Id != "oats-spring").Select(l => l.Used.Pounds).Order());
    }

    [Fact]
    public void What_was_planned_is_needed_and_what_was_not_spread_is_owed()
    {
        string plan = Plan();
        Typed("none\n2 bags 2026-09-10\n", "record", plan);
        var owed = PlotOwed.Of(Book(), "Fern Bottom", PlanFile.Read(File.ReadAllText(plan)).Plan!.Plot.Area, new(2026, 12, 31));
        Assert.Equal(owed.Lime.Value.Need.Pounds, owed.Lime.Value.StillOwed.Pounds, 1e-9);
        Assert.True(owed.Lime.Value.Need.Pounds > 700);
        var (exit, sheet, error) = Typed("", "history", plan, "--width", "100");
        Assert.Equal((0, ""), (exit, error));
        Assert.Contains("Owed: lime 737 lb of 737 lb", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_book_has_is_not_asked_again_and_what_was_left_blank_is()
    {
        string plan = Plan();
        Typed("yes\n\n", "record", plan);
        int before = Book().Entries.Length;
        var (_, output, _) = Typed("", "record", plan);
        Assert.Contains("1. Lime spread, ground limestone: in the book as owner-", output, StringComparison.Ordinal);
        Assert.Contains("2. Fertilizer spread, 10-20-20? Planned", output, StringComparison.Ordinal);
        Assert.Equal(before, Book().Entries.Length);
    }

    [Theory]
    [InlineData("rain 0.8 in 2026-09-20")]
    [InlineData("rain 1.4 in over 7 days 2026-09-20")]
    [InlineData("lime 3 bags 2026-04-10")]
    [InlineData("lime pelleted dolomite 2.5 bags on 0.2 ac + 40 lb on 0.1 ac 2026-04-10")]
    [InlineData("fertilizer urea 20 lb 2026-11-01")]
    [InlineData("seed crimson clover 3 lb, chicory 3 oz, not packed, moist 2026-09-12")]
    [InlineData("count crimson clover: 9 8 7 in 1 ft2 2026-10-05")]
    [InlineData("weeds pigweed, 5 % 2026-10-05")]
    [InlineData("clipping 620/350 540/400 700/330 g in 9.6 ft2, 22 % dry 2026-12-01")]
    [InlineData("browse chicory: 5 10 20 10 3 2 2026-12-01")]
    [InlineData("camera 310 pictures in 14 days 2026-12-01")]
    [InlineData("note gate left open 2026-12-02")]
    public void A_single_entry_of_every_sort_is_written_at_any_time(string entry)
    {
        var (exit, output, error) = Typed("", ["record", Plan(), .. entry.Split(' ')]);
        Assert.Equal((0, ""), (exit, error));
        Assert.Contains("Written to", output, StringComparison.Ordinal);
        Assert.Contains(Book().Current, e => e is not (SoilReportEntry or NeedEntry));
    }

    [Theory]
    [InlineData("rain 0.8 2026-09-20", "expected a length")]
    [InlineData("rain 0.8 in", "say the day too")]
    [InlineData("rain 0.8 in 2026-02-30", "one day is wanted")]
    [InlineData("lime many bags 2026-04-10", "expected")]
    [InlineData("lime 0 bags 2026-04-10", "bags")]
    [InlineData("fertilizer 3 bags 2026-09-10", "name the product first")]
    [InlineData("count 9 8 7 2026-10-05", "the hoop")]
    [InlineData("browse 1 2 3 2026-10-05", "six counts")]
    [InlineData("camera some 2026-10-05", "310 pictures in 14 days")]
    [InlineData("dance 2026-10-05", "expected one of")]
    [InlineData("strike owner-99", "no entry that holds")]
    [InlineData("seed alfalfa 3 lb 2026-09-12", "name a kind")]
    public void What_cannot_be_read_is_one_line_and_nothing_of_it_is_written(string entry, string words)
    {
        var (exit, _, error) = Typed("", ["record", Plan(), .. entry.Split(' ')]);
        Assert.Equal(2, exit);
        Assert.Contains(words, Assert.Single(error.TrimEnd('\n').Split('\n')), StringComparison.Ordinal);
        Assert.All(Book().Current, e => Assert.True(e is SoilReportEntry or NeedEntry));
    }

    [Fact]
    public void A_struck_entry_is_gone_from_what_holds_and_stays_in_the_book()
    {
        string plan = Plan();
        Typed("", "record", plan, "rain", "0.8 in", "2026-09-20");
        string id = Book().Current.OfType<RainEntry>().Single().Id!;
        Typed("", "record", plan, "strike", id);
        Assert.Empty(Book().Current.OfType<RainEntry>());
        Assert.Contains(Book().Entries, e => e.Id == id);
    }

    [Fact]
    public void Lines_of_a_file_are_written_one_by_one_and_a_wrong_one_is_named()
    {
        string plan = Plan();
        string lines = Path.Combine(folder, "lines.txt");
        File.WriteAllText(lines, "rain 0.8 in 2026-09-20\n\nrain much 2026-09-21\nrain 0.4 in 2026-09-22\n");
        var (exit, output, error) = Typed("", "record", plan, "--entries", lines);
        Assert.Equal(2, exit);
        Assert.StartsWith("line 3: ", error, StringComparison.Ordinal);
        Assert.Equal(2, Book().Current.OfType<RainEntry>().Count());
        Assert.Equal(2, output.Split('\n').Count(l => l.EndsWith(": rain", StringComparison.Ordinal)));
    }

    /// <summary>A plan that sows nothing and has no report takes single entries, and says that it has no blanks.</summary>
    [Fact]
    public void A_plan_of_a_plot_alone_takes_single_entries_and_has_no_blanks()
    {
        string plan = Path.Combine(folder, "plot.json");
        File.WriteAllText(plan, """{ "planVersion": 1, "plot": { "name": "north", "area": "0.5 ac", "use": "browsed" } }""");
        Assert.Equal(0, Typed("", "record", plan, "rain", "0.8 in", "2026-09-20").Exit);
        Assert.Single(Book().Current);
        var (exit, _, error) = Typed("", "record", plan);
        Assert.Equal(2, exit);
        Assert.Contains("this plan has no blanks to ask", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_that_is_not_there_and_a_plot_that_is_not_in_it_are_one_line()
    {
        string plan = Plan();
        var (exit, _, error) = Typed("", "history", plan);
        Assert.Equal(2, exit);
        Assert.Contains("there is no plot book", error, StringComparison.Ordinal);
        Typed("", "record", plan, "rain", "0.8 in", "2026-09-20");
        (exit, _, error) = Typed("", "history", "Nowhere", "--book", Path.Combine(folder, "plot-book"));
        Assert.Equal(2, exit);
        Assert.Contains("The book has no plot 'Nowhere'; it has Fern Bottom.", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2025", "after the year 2025")]
    [InlineData("soon", "expected a year")]
    public void A_year_before_the_plan_is_refused(string year, string words)
    {
        string plan = Plan();
        Typed("", "record", plan, "rain", "0.8 in", "2026-09-20");
        var (exit, _, error) = Typed("", "review", year, "--from", plan, "--plan", Path.Combine(folder, "next.json"));
        Assert.Equal(2, exit);
        Assert.Contains(words, error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(folder, "next.json")));
    }

    [Fact]
    public void A_plan_that_is_there_is_not_written_over()
    {
        string plan = Plan();
        Typed(AWholeSeason, "record", plan);
        string before = File.ReadAllText(plan);
        var (exit, _, error) = Typed("", "review", "2026", "--from", plan, "--plan", plan);
        Assert.Equal(1, exit);
        Assert.Contains("not written over", error, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(plan));
    }

    /// <summary>Lime of the need is down: the next plan orders none, says why, and keeps every other line of the owner.</summary>
    [Fact]
    public void Lime_that_is_down_is_not_bought_again_and_remarks_of_the_owner_stay()
    {
        string plan = Plan();
        File.WriteAllText(plan, File.ReadAllText(plan).Replace("{\n  \"planVersion\"", "{\n  // ask the neighbor for his roller\n  \"planVersion\"", StringComparison.Ordinal));
        Typed(AWholeSeason, "record", plan);
        string next = Path.Combine(folder, "next.json");
        var (exit, output, error) = Typed("", "review", "2026", "--plan", next, "--all");
        Assert.Equal((0, ""), (exit, error));
        Assert.Contains("lime since the sample: none becomes 0.63 ton/ac", output, StringComparison.Ordinal);
        string text = File.ReadAllText(next);
        Assert.Contains("// ask the neighbor for his roller", text, StringComparison.Ordinal);
        var (was, read) = (PlanFile.Read(File.ReadAllText(plan)).Plan!, PlanFile.Read(text).Plan!);
        Assert.Equal(new DateOnly(2027, 9, 12), read.PlantingDate);
        Assert.True(was.Solve().Lime.Value.Order.Value.Product.Pounds > 700);
        Assert.Equal(AnswerState.NoneNeeded, read.Solve().Lime.State);
        Assert.Contains(read.Solve().Findings, f => f.Code == "plan-lime-since-sample");
        Assert.Equal(was.FertilizerOffers.Select(o => o.ToString()), read.FertilizerOffers.Select(o => o.ToString()));
        Assert.Equal(was.SeedOffers.Select(o => o.ToString()), read.SeedOffers.Select(o => o.ToString()));
        Assert.Equal(was.Kinds.Select(k => k.ToString()), read.Kinds.Select(k => k.ToString()));
    }
}
