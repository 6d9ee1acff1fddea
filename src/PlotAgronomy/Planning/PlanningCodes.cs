namespace PlotAgronomy.Planning;

/// <summary>The codes of this room's findings, as its table holds them.</summary>
internal static class PlanningCodes
{
    internal const string AskDay = "plan-ask-day";
    internal const string AskMethod = "plan-ask-method";
    internal const string AskMethodMeant = "plan-ask-method-meant";
    internal const string CreditNeedsEarlier = "plan-credit-needs-earlier";
    internal const string CreditNeedsStand = "plan-credit-needs-stand";
    internal const string DeerOnSmallPlot = "plan-deer-on-small-plot";
    internal const string LimeInBulk = "plan-lime-in-bulk";
    internal const string LimeNearWater = "plan-lime-near-water";
    internal const string LimeNotCountable = "plan-lime-not-countable";
    internal const string LimeSinceSample = "plan-lime-since-sample";
    internal const string NoFrost = "plan-no-frost";
    internal const string OwnEmergence = "plan-own-emergence";
    internal const string RangeLowEnd = "plan-range-low-end";
    internal const string LotShort = "plan-lot-short";
    internal const string LotToppedUp = "plan-lot-topped-up";
    internal const string NoFertilizerOffered = "plan-no-fertilizer-offered";
    internal const string NoLimeDate = "plan-no-lime-date";
    internal const string NoLimeOffered = "plan-no-lime-offered";
    internal const string NoSides = "plan-no-sides";
    internal const string SpreadMoreThanHopper = "plan-spread-more-than-hopper";
    internal const string SwathRun = "plan-swath-run";
    internal const string TillageUnused = "plan-tillage-unused";
}
