using System.Globalization;
using PlotAgronomy.Records;

namespace PlotAgronomy.FieldQuestions.Records;

/// <summary>Five cages stood on a plot of oats and peas; in November they were clipped inside and outside, and plants were
/// looked at in three months. How much did deer eat?</summary>
internal static class Eaten
{
    private const string Plot = "Long Bench";

    internal static void Answer(TextWriter output)
    {
        // A pan with clippings before and after a night in a low oven.
        var dry = ClippingEntry.DryPart(wet: Mass.FromGrams(812), dry: Mass.FromGrams(371), container: Mass.FromGrams(264));
        (double Inside, double Outside)[] clipped = [(540, 330), (615, 290), (480, 415), (702, 350), (560, 240)];
        var clipping = new ClippingEntry
        {
            On = new(2026, 11, 14),
            Plot = Plot,
            Clipped = Area.FromSquareFeet(9.6),
            DryMatter = dry,
            Pairs = [.. clipped.Select(c => Pair(c.Inside, c.Outside))],
        };
        var cages = CageOutcome.Of(clipping);
        output.Tell(cages);
        output.WriteLine($"So {Pounds(cages.YieldLow!.Value)} to {Pounds(cages.YieldHigh!.Value)} grew, dry,");
        output.WriteLine($"and {Part(cages.UsePercentLow!.Value)} to {Part(cages.UsePercentHigh!.Value)} of it was eaten.");

        // Plants untouched, nipped, a third, half, most and all gone.
        BookEntry[] looked = [Looked(9, 38, 8, 3, 1, 0, 0), Looked(10, 21, 12, 10, 5, 2, 0), Looked(11, 6, 9, 14, 12, 7, 2)];
        var book = PlotBook.Empty.With("ida", [clipping, .. looked]);
        foreach (var month in BrowseByMonth.Of(book, Plot).Months)
        {
            string name = CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month.Month);
            output.WriteLine($"{name}: {Part(month.UsePercent)} browsed, give or take {Part(month.MarginPercent)}.");
        }
    }

    private static ClippedPair Pair(double inside, double outside) =>
        new() { Inside = Mass.FromGrams(inside), Outside = Mass.FromGrams(outside) };

    private static BrowseEntry Looked(int month, params int[] plants) =>
        new() { On = new(2026, month, 14), Plot = Plot, PlantsByClass = [.. plants] };

    private static string Pounds(ApplicationRate rate) => Amounts.Print(rate, decimals: 0);

    private static string Part(double percent) => $"{Amounts.Print(percent, 0)} %";
}
