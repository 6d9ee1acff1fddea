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
        // The file: here in memory. The lights went out while its last line was written.
        using var file = new MemoryStream();
        PlotBook.Append(file, "book", "olive", Needed(), Limed());
        file.Write("{\"v\":1,\"id\":\"olive-3\","u8);
        file.Position = 0;
        var book = PlotBook.Read(file, "book");
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
                output.WriteLine($"  up to {Amounts.Print(work.StillToWork, 0)} of the {work.Entry.Material.Name} has still to work");
            }
        }

        output.Warn(days[^1].Findings);
        using var copy = new MemoryStream();
        book.WriteTo(copy);
        output.WriteLine($"A clean copy of the file takes {Amounts.Print(copy.Length, 0)} bytes.");
        output.WriteLine($"As a table it goes back to the neighbor: {PlotBook.FromCsv(book.ToCsv(), "table", "hank")}.");
    }

    private static NeedEntry Needed()
    {
        var tons = ApplicationRate.FromShortTonsPerAcre(1.2);
        var lime = LimeRate.FromBasis(tons, 6.5, Length.FromInches(6), LimeBasis.GroundLimestone, Institution.NorthCarolina);
        return new() { On = new(2026, 3, 1), Plot = Plot, Lime = lime, Phosphate = ApplicationRate.FromPoundsPerAcre(50) };
    }

    private static LimeEntry Limed()
    {
        var lime = LimingMaterial.FromAnalysis("barn lime", LimingForm.GroundLimestone, 90, SieveAnalysis.FromPercent((20, 95), (100, 50)));
        return new() { On = new(2026, 4, 11), Plot = Plot, Material = lime, Loads = [SpreadLoad.FromBags(12, Mass.FromPounds(50))] };
    }
}
