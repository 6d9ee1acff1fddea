using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>What crop rows are called.</summary>
public static class CropRows
{
    private static readonly Table<Entry> Table = new("Nutrients/Data/crop-rows.csv", Entry.FromRow);

    private static readonly Lazy<IReadOnlyDictionary<CropRow, Entry>> ByRow = Table.By(e => e.Row);

    private static readonly Lazy<EnumWords<CropRow>> Words = new(() => new([.. Table.Rows.Select(e => (e.Row, e.Words))]));

    /// <summary>The words for a crop row.</summary>
    /// <param name="row">Crop row.</param>
    /// <returns>Words such as <c>deer and turkey food plot</c>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown row.</exception>
    public static string WordsFor(CropRow row) => Words.Value[Guard.Defined(row)];

    /// <summary>Finds a crop row by its words.</summary>
    /// <param name="words">Words such as <c>alfalfa</c>, in capitals or not.</param>
    /// <param name="row">The row.</param>
    /// <param name="problem">What is wrong and which rows there are; empty when a row was found.</param>
    /// <returns>True when a row has these words.</returns>
    public static bool TryFind(string? words, out CropRow row, out string problem)
    {
        string wanted = words?.Trim() ?? "";
        foreach (var (candidate, word) in Words.Value.All)
        {
            if (word.Equals(wanted, StringComparison.OrdinalIgnoreCase))
            {
                (row, problem) = (candidate, "");
                return true;
            }
        }

        ImmutableArray<string> known = [.. Words.Value.All.OrderBy(w => w.Value).Select(w => $"'{w.Word}'")];
        (row, problem) = (default, $"no crop row is called '{wanted}'; expected one of {string.Join(", ", known)}");
        return false;
    }

    internal static YieldUnit UnitOf(CropRow row) => ByRow.Value[row].Unit;

    internal static double? UnusualYieldAbove(CropRow row) => ByRow.Value[row].UnusualAbove;

    /// <summary>Whether the row was printed for a food plot, whatever is sown on it.</summary>
    internal static bool IsWildlifePlot(CropRow row) =>
        row is CropRow.DeerTurkeyPlot or CropRow.UplandGamePlot or CropRow.WaterfowlPlot;

    private sealed record Entry(CropRow Row, string Words, YieldUnit Unit, double? UnusualAbove)
    {
        internal static Entry FromRow(CsvRow row) =>
            new(
                row.Choice<CropRow>("id"),
                row.Text("words"),
                row.Choice<YieldUnit>("yield_unit"),
                row.NumberOrNull("unusual_yield_above")
            );
    }
}
