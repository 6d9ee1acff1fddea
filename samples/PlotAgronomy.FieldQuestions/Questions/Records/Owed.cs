using PlotAgronomy.Liming;
using PlotAgronomy.Records;

namespace PlotAgronomy.FieldQuestions.Records;

/// <summary>Two people keep the book of a plot of half an acre: one in a file to which entries are added, one in a table. What is the
/// plot owed after each day's work?</summary>
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
        var half = Area.FromAcres(0.5);
        var due = LimeRate.FromBasis(ApplicationRate.FromShortTonsPerAcre(1.2), 6.5, Length.FromInches(6), LimeBasis.GroundLimestone, Institution.NorthCarolina);
        var lime = LimingMaterial.FromAnalysis("barn lime", LimingForm.GroundLimestone, 90, SieveAnalysis.FromPercent((20, 95), (60, 70), (100, 50)));

        // The file: here in memory. The lights went out while the last line was written.
        using var file = new MemoryStream();
        PlotBook.Append(file, "book", "olive", new NeedEntry { On = new(2026, 3, 1), Plot = Plot, Lime = due, Phosphate = ApplicationRate.FromPoundsPerAcre(50) });
        PlotBook.Append(file, "book", "olive", new LimeEntry { On = new(2026, 4, 11), Plot = Plot, Material = lime, Loads = [SpreadLoad.FromBags(12, Mass.FromPounds(50))] });
        file.Write("{\"v\":1,\"id\":\"olive-3\","u8);
        file.Position = 0;
        var book = PlotBook.Read(file, "book");
        output.WriteLine($"{book}; lines set aside: {string.Join(", ", book.SetAside)}");

        book = book.With(PlotBook.FromCsv(NeighborsTable, "table", "hank"));
        foreach (var day in PlotOwed.Running(book, Plot, half, new(2026, 12, 31)))
        {
            output.WriteLine($"{day.On.Aloud()}: {Amounts.Print(day.Lime.Value.StillOwed, "lb", 0)} of lime owed; {string.Join("; ", day.Nutrients)}");
            foreach (var work in day.LimeAtWork)
            {
                output.WriteLine($"  up to {Amounts.Print(work.StillToWork, 0)} of the {work.Entry.Material.Name} has still to work this year");
            }
        }

        output.Warn(book.Findings);
        output.Warn(PlotOwed.Of(book, Plot, half, new(2026, 12, 31)).Findings);

        using var copy = new MemoryStream();
        book.WriteTo(copy);
        output.WriteLine($"A clean copy of the file has {PlotBook.Read(new MemoryStream(copy.ToArray()), "copy").Entries.Length} entries; as a table for both:");
        output.Write(book.ToCsv());
    }
}
