using PlotAgronomy.Liming;
using PlotAgronomy.Records;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Records;

public class RecordsDocTests
{
    [Fact]
    public void The_page_shows_what_the_code_does() =>
        DocExample.AssertCurrent("docs/records.md", "tests/PlotAgronomy.Tests/Records/RecordsDocTests.cs", Example);

    [Fact]
    public void The_page_lists_every_finding_of_the_room()
    {
        string page = File.ReadAllText(Repository.PathOf("docs/records.md"));
        Assert.Empty(FindingCatalog.Codes.Concat(QuestionCatalog.Codes).Where(c => c.StartsWith("record-", StringComparison.Ordinal) && !page.Contains($"`{c}`", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_page_lists_every_sort_of_entry()
    {
        string page = File.ReadAllText(Repository.PathOf("docs/records.md"));
        Assert.Empty(EntryKinds.Words.Where(w => !page.Contains($"| `{w}` |", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_line_on_the_page_is_an_entry()
    {
        string line = File.ReadLines(Repository.PathOf("docs/records.md")).Single(l => l.StartsWith("{\"v\":", StringComparison.Ordinal));
        var book = Books.Read(System.Text.Encoding.UTF8.GetBytes(line + "\n"));
        Assert.Empty(book.Findings);
        Assert.Equal(line + "\n", book.Text());
    }

    private static void Example(TextWriter output)
    {
        // begin example
        // Two years of a plot of half an acre. PlotBookFolder.Open(folder, "anna") keeps such a book on the disk.
        const string Plot = "north";
        var area = Area.FromAcres(0.5);
        var crimson = KindCatalog.Standard.Find("crimson clover");
        SoilReport Report(double ph, double phosphorus) => new()
        {
            Laboratory = "county laboratory",
            WaterPh = WaterPh.FromValue(ph),
            Readings = [SoilReading.FromPrinted(SoilAnalyte.Phosphorus, phosphorus, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3)],
        };
        var due = LimeRate.FromBasis(ApplicationRate.FromShortTonsPerAcre(1.5), 6.5, Length.FromInches(6), LimeBasis.GroundLimestone, Institution.NorthCarolina);
        var lime = LimingMaterial.FromAnalysis("pelleted lime", LimingForm.GroundLimestone, 92, SieveAnalysis.FromPercent((20, 100), (60, 90), (100, 75)));
        var seed = new SeedLot { Label = "A-1", Kind = crimson, Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(98), Fraction.FromPercent(85)) };
        PlotBook book = PlotBook.Empty.With(
            "anna",
            new SoilReportEntry { On = new(2024, 3, 2), Plot = Plot, Report = Report(5.6, 14) },
            new NeedEntry { On = new(2024, 3, 20), Plot = Plot, Lime = due, Phosphate = ApplicationRate.FromPoundsPerAcre(60) },
            new LimeEntry { On = new(2024, 4, 6), Plot = Plot, Material = lime, Loads = [SpreadLoad.FromBags(20, Mass.FromPounds(40))] },
            new FertilizerEntry { On = new(2024, 8, 30), Plot = Plot, Product = FertilizerProduct.Create("13-13-13", FertilizerAnalysis.FromGrade("13-13-13")), Loads = [SpreadLoad.FromBags(3, Mass.FromPounds(50))] },
            new SowingEntry { On = new(2024, 9, 1), Plot = Plot, Area = area, Method = SowingMethod.Broadcast, Lots = [new() { Lot = seed, Used = BulkSeedMass.FromPounds(9) }] },
            new CountEntry { On = new(2024, 9, 26), Plot = Plot, Kind = crimson, Hoop = Area.FromSquareFeet(1), Plants = [19, 25, 14, 22, 17, 28, 20, 23, 12, 21] },
            new ClippingEntry { On = new(2024, 12, 1), Plot = Plot, Clipped = Area.FromSquareFeet(9.6), DryMatter = Fraction.FromPercent(22), Pairs = [new() { Inside = Mass.FromGrams(620), Outside = Mass.FromGrams(350) }, new() { Inside = Mass.FromGrams(540), Outside = Mass.FromGrams(400) }, new() { Inside = Mass.FromGrams(700), Outside = Mass.FromGrams(330) }] },
            new BrowseEntry { On = new(2024, 12, 1), Plot = Plot, Kind = crimson, PlantsByClass = [5, 10, 20, 10, 3, 2] },
            new SoilReportEntry { On = new(2025, 10, 4), Plot = Plot, Report = Report(6.2, 19) });

        // Twenty bags were twenty-two: a correction names what it corrects.
        LimeEntry spread = book.Current.OfType<LimeEntry>().Single() with { Loads = [SpreadLoad.FromBags(22, Mass.FromPounds(40))] };
        book = book.With("ben", spread.InPlaceOf("anna-3"));
        output.WriteLine($"{book}: {book.Entries.Length} lines");

        // What is owed on a day.
        PlotOwed owed = PlotOwed.Of(book, Plot, area, new(2025, 11, 1));
        output.WriteLine($"lime owed {Amounts.Print(owed.Lime.Value.StillOwed, "lb", 0)}; {string.Join("; ", owed.Nutrients)}");

        // What the reports say, and whether the lime did what it promised.
        foreach (ReadingTrend trend in ReadingTrend.All(book, Plot))
        {
            output.WriteLine($"{trend}; real: {trend.IsRealChange}; a trend: {trend.IsTrend}");
        }

        PhResponse response = PhResponse.Of(book, Plot, area, new(2025, 11, 1)).Value;
        output.WriteLine($"pH {Amounts.Print(response.After.Value, 1)}, promised {Amounts.Print(response.PromisedLow, 1)} to {Amounts.Print(response.PromisedHigh, 1)}");

        // What grew and what was used.
        StandOutcome stand = StandOutcome.All(book, Plot)[0].Value;
        output.WriteLine($"{stand} ({Amounts.Print(100 * stand.EmergenceLow, 0)} to {Amounts.Print(100 * stand.EmergenceHigh, 0)} %): {stand.Verdict}");
        CageOutcome cages = CageOutcome.Of(book.Current.OfType<ClippingEntry>().Single());
        output.WriteLine($"{cages}; use {Amounts.Print(cages.UsePercentLow!.Value, 0)} to {Amounts.Print(cages.UsePercentHigh!.Value, 0)} %");
        BrowseByMonth browse = BrowseByMonth.Of(book, Plot);
        output.WriteLine(browse);
        KindRanking ranking = KindRanking.Of(book, RankedMeasure.Emergence);
        output.WriteLine(ranking);

        // And what it suggests.
        NextYear next = NextYear.Of(book, Plot, area, new(2025, 11, 1));
        foreach (var suggestion in next.Findings)
        {
            output.WriteLine(suggestion);
        }
        // end example
    }
}
