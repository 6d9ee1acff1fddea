using System.Collections.Frozen;
using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>What crop rows are called.</summary>
public static class CropRows
{
    private static readonly Lazy<FrozenDictionary<CropRow, Entry>> ByRow = new(Load);

    /// <summary>The words for a crop row.</summary>
    /// <param name="row">Crop row.</param>
    /// <returns>Words such as <c>deer and turkey food plot</c>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown row.</exception>
    public static string WordsFor(CropRow row) => ByRow.Value[Guard.Defined(row)].Words;

    /// <summary>Finds a crop row by its words.</summary>
    /// <param name="words">Words such as <c>alfalfa</c>, in capitals or not.</param>
    /// <param name="row">The row.</param>
    /// <param name="problem">What is wrong and which rows there are; empty when a row was found.</param>
    /// <returns>True when a row has these words.</returns>
    public static bool TryFind(string? words, out CropRow row, out string problem)
    {
        string wanted = words?.Trim() ?? "";
        foreach (var (candidate, entry) in ByRow.Value)
        {
            if (entry.Words.Equals(wanted, StringComparison.OrdinalIgnoreCase))
            {
                (row, problem) = (candidate, "");
                return true;
            }
        }

        ImmutableArray<string> known = [.. ByRow.Value.OrderBy(p => p.Key).Select(p => $"'{p.Value.Words}'")];
        (row, problem) = (default, $"no crop row is called '{wanted}'; expected one of {string.Join(", ", known)}");
        return false;
    }

    internal static YieldUnit UnitOf(CropRow row) => ByRow.Value[row].Unit;

    internal static double? UnusualYieldAbove(CropRow row) => ByRow.Value[row].UnusualAbove;

    /// <summary>Whether the row was printed for a food plot, whatever is sown on it.</summary>
    internal static bool IsWildlifePlot(CropRow row) =>
        row is CropRow.DeerTurkeyPlot or CropRow.UplandGamePlot or CropRow.WaterfowlPlot;

    private static FrozenDictionary<CropRow, Entry> Load() =>
        Table
            .Keyed(
                "Nutrients/Data/crop-rows.csv",
                r => r.Choice<CropRow>("id"),
                r => new Entry(r.Text("words"), r.Choice<YieldUnit>("yield_unit"), r.NumberOrNull("unusual_yield_above"))
            )
            .Value;

    private sealed record Entry(string Words, YieldUnit Unit, double? UnusualAbove);
}
