namespace PlotAgronomy.Soil;

/// <summary>What is noticed while an exchange capacity is summed, in its order; the findings are made when asked for.</summary>
internal sealed class CationRemarks
{
    private List<Func<IEnumerable<Finding>>>? remarks;

    internal void Add(Func<Finding> remark) => (remarks ??= []).Add(() => [remark()]);

    internal void Add(ReadingConversion conversion) => (remarks ??= []).Add(conversion.Remarks);

    internal IEnumerable<Finding> All() => remarks is null ? [] : remarks.SelectMany(remark => remark());
}
