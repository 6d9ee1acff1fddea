namespace PlotAgronomy.Nutrients;

/// <summary>What a class is given, in lb/ac; NaN where no rate is printed.</summary>
internal readonly record struct ClassNeed(double Low, double High, NeedRemarks Remarks)
{
    /// <summary>No rate, and why.</summary>
    internal static ClassNeed None(NeedRemarks why) => new(double.NaN, double.NaN, why);

    internal static ClassNeed Figure(double pounds) => new(pounds, pounds, NeedRemarks.None);
}
