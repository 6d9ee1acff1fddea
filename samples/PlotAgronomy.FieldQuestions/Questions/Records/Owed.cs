using PlotAgronomy.Liming;
using PlotAgronomy.Records;

namespace PlotAgronomy.FieldQuestions.Records;

/// <summary>Two people keep the book of a plot of half an acre: one in a file to which entries are added, one in a table. What
/// is the plot owed after each day's work?</summary>
internal static class Owed
{
    private const string Plot = "Ash Hollow";
    private const string NeighborsTable =
        """
        what,on,plot,product,analysis,part.bags,part.bag,part.area
        fertilizer,2026-09-02,Ash Hollow,0-20-20,0-20-20,2,50 lb,0.5 ac
        """;

    internal static void Answer(TextWriter output)
    {
        // Here the file is in memory; the lights went out while its last line was written.
        using var file = new MemoryStream();
        PlotBook.Append(file, "book", "olive", Needed(), Limed());
        file.Write("{\"v\":1,\"id\":\"olive-3\","u8);
        var book = PlotBook.Read(new MemoryStream(file.ToArray()), "book");
        output.WriteLine($"{book}; set aside: {string.Join(", ", book.SetAside)}");
        output.Warn(book.Findings);

        book = book.With(PlotBook.FromCsv(NeighborsTable, "table", "hank"));
        var days = PlotOwed.Running(book, Plot, Area.FromAcres(0.5), upTo: new(2026, 12, 31));
        foreach (var day in days)
        {
            string lime = Amounts.Print(day.Lime.Value.StillOwed, "lb", 0);
            output.WriteLine($"{day.On.Aloud()}: {lime} of lime owed; {string.Join("; ", day.Nutrients)}");
            foreach (var work in day.LimeAtWork)
            {
                output.WriteLine($"  of {work.Entry.Material.Name} up to {Amounts.Print(work.StillToWork, 0)} has still to work");
            }
        }

        output.Warn(days[^1].Findings);
        using var copy = new MemoryStream();
        book.WriteTo(copy);
        var back = PlotBook.FromCsv(book.ToCsv(), "table", "hank");
        output.WriteLine($"A clean copy of the file has {copy.Length} bytes; the table for the neighbor holds {back}.");
    }

    private static NeedEntry Needed()
    {
        var tons = ApplicationRate.FromShortTonsPerAcre(1.2);
        var lime = LimeRate.FromBasis(tons, 6.5, Length.FromInches(6), LimeBasis.GroundLimestone, Institution.NorthCarolina);
        return new() { On = new(2026, 3, 1), Plot = Plot, Lime = lime, Phosphate = ApplicationRate.FromPoundsPerAcre(50) };
    }

    private static LimeEntry Limed()
    {
        var sieved = SieveAnalysis.FromPercent((20, 95), (100, 50));
        var lime = LimingMaterial.FromAnalysis("barn lime", LimingForm.GroundLimestone, 90, sieved);
        var bags = SpreadLoad.FromBags(12, Mass.FromPounds(50));
        return new() { On = new(2026, 4, 11), Plot = Plot, Material = lime, Loads = [bags] };
    }
}
