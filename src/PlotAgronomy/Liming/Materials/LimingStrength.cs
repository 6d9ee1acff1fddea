using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>How strong a kind of liming material can be, in percent of pure carbonate: outside, a label was misread.</summary>
internal sealed class LimingStrength
{
    private static readonly Lazy<IReadOnlyDictionary<LimingForm, LimingStrength>> ByForm = new Table<LimingStrength>(
        "Liming/Data/strengths.csv",
        FromRow
    ).By(s => s.Form);

    internal required LimingForm Form { get; init; }

    /// <summary>Calcium carbonate equivalent.</summary>
    internal required double LowestCcePercent { get; init; }

    /// <summary>Calcium carbonate equivalent; no figure that counts fineness as well lies higher.</summary>
    internal required double HighestCcePercent { get; init; }

    /// <summary>A figure that counts fineness and water too, as a percentage of the whole of its index.</summary>
    internal required double LowestFigurePercent { get; init; }

    internal required Origin Origin { get; init; }

    /// <summary>The band of a kind of material; null for what is no lime.</summary>
    internal static LimingStrength? Of(LimingForm form) => ByForm.Value.GetValueOrDefault(form);

    /// <summary>What a figure can be in an index, in its unit.</summary>
    internal (double Low, double High) In(LimeIndex index)
    {
        bool isCce = index == LimeIndex.CalciumCarbonateEquivalent;
        double low = isCce ? LowestCcePercent : LowestFigurePercent;
        double high = HighestCcePercent * (index.IsRelative ? LimingConstants.All["standard-lime-allowance"] : 1);
        return (low * index.Whole / 100, high * index.Whole / 100);
    }

    private static LimingStrength FromRow(CsvRow row) =>
        new()
        {
            Form = row.Choice<LimingForm>("id"),
            LowestCcePercent = row.Number("cce_low"),
            HighestCcePercent = row.Number("cce_high"),
            LowestFigurePercent = row.Number("figure_low"),
            Origin = row.Origin(),
        };
}
