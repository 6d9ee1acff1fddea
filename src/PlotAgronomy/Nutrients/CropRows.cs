using System.Collections.Frozen;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>What a crop row is called, the unit its yield is counted in, and the yield above which it is questioned.</summary>
internal static class CropRows
{
    private static readonly Lazy<FrozenDictionary<CropRow, Entry>> ByRow = new(Load);

    internal static string WordsFor(CropRow row) => ByRow.Value[row].Words;

    internal static YieldUnit UnitOf(CropRow row) => ByRow.Value[row].Unit;

    internal static double? UnusualYieldAbove(CropRow row) => ByRow.Value[row].UnusualAbove;

    private static FrozenDictionary<CropRow, Entry> Load() =>
        CsvTable.Embedded("nutrients-crop-rows.csv", "id", "words", "yield_unit", "unusual_yield_above", "source_id", "locator", "status").Rows
            .ToFrozenDictionary(r => r.Choice<CropRow>("id"), r => new Entry(r.Text("words"), r.Choice<YieldUnit>("yield_unit"), r.NumberOrNull("unusual_yield_above")));

    private sealed record Entry(string Words, YieldUnit Unit, double? UnusualAbove);
}
