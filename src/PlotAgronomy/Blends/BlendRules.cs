using System.Collections.Frozen;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>Limits of practice, each with its source, from Blends/Data/rules.csv.</summary>
internal static class BlendRules
{
    private static readonly Lazy<FrozenDictionary<string, double>> Values = new(() =>
        CsvTable
            .Embedded("Blends/Data/rules.csv", "id", "value", "unit", "source_id", "locator", "status")
            .Rows.ToFrozenDictionary(r => r.Text("id"), r => r.Number("value"), StringComparer.Ordinal)
    );

    internal static double SeasonShare => Values.Value["season-share"];

    internal static double UncertainTotal => Values.Value["uncertain-total"];

    internal static double PastureKinds => Values.Value["pasture-kinds"];

    internal static double LegumeShare => Values.Value["legume-share"];

    internal static double HungryShare => Values.Value["hungry-share"];

    internal static double ThinBag => Values.Value["thin-bag"];

    internal static double SmallBatchSpread => Values.Value["small-batch-spread"];

    internal static double WeighingError => Values.Value["weighing-error"];

    internal static double ShareChange => Values.Value["share-change"];
}
