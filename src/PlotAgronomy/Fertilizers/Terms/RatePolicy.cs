namespace PlotAgronomy.Fertilizers;

/// <summary>How the rate of one product is set by several needs.</summary>
internal enum RatePolicy
{
    /// <summary>Meet every need the product serves, whatever that overshoots.</summary>
    MeetEveryNeed,

    /// <summary>Pass no need and no cap; other products fill what is left.</summary>
    PassNoNeedAndNoCap,
}
