namespace PlotAgronomy.Records;

/// <summary>The codes of this room's findings and questions, as its tables hold them.</summary>
internal static class RecordCodes
{
    internal const string AskLimeNeed = "record-ask-lime-need";
    internal const string AskLimeStrength = "record-ask-lime-strength";
    internal const string AskPhAfter = "record-ask-ph-after";
    internal const string AskPhBefore = "record-ask-ph-before";
    internal const string AskReport = "record-ask-report";
    internal const string AskSeedCount = "record-ask-seed-count";
    internal const string AskSown = "record-ask-sown";
    internal const string ChangeIsNoise = "record-change-is-noise";
    internal const string CorrectedTwice = "record-corrected-twice";
    internal const string CorrectsNothing = "record-corrects-nothing";
    internal const string CountOffTime = "record-count-off-time";
    internal const string FailedTwice = "record-failed-twice";
    internal const string FedNothing = "record-fed-nothing";
    internal const string FewCages = "record-few-cages";
    internal const string FewHoops = "record-few-hoops";
    internal const string FewPlants = "record-few-plants";
    internal const string IdTwice = "record-id-twice";
    internal const string LessThanLeftOut = "record-less-than-left-out";
    internal const string LimeAtWork = "record-lime-at-work";
    internal const string LineSetAside = "record-line-set-aside";
    internal const string MedianOfDay = "record-median-of-day";
    internal const string MoreThanSown = "record-more-than-sown";
    internal const string NegativeUse = "record-negative-use";
    internal const string NotCovered = "record-not-covered";
    internal const string OldClover = "record-old-clover";
    internal const string OwnEmergence = "record-own-emergence";
    internal const string PhAbovePromise = "record-ph-above-promise";
    internal const string PhBelowPromise = "record-ph-below-promise";
    internal const string RankingAlike = "record-ranking-alike";
    internal const string RankingFew = "record-ranking-few";
    internal const string Rotate = "record-rotate";
    internal const string SeriesApart = "record-series-apart";
    internal const string StandFailed = "record-stand-failed";
    internal const string StandThin = "record-stand-thin";
    internal const string TornLine = "record-torn-line";
    internal const string TrendShort = "record-trend-short";
}
