namespace PlotAgronomy.Seeds;

/// <summary>The codes of this room's findings and questions, as its tables hold them.</summary>
internal static class SeedCodes
{
    internal const string AskCount = "seed-ask-count";
    internal const string AskDrainage = "seed-ask-drainage";
    internal const string AskHomeTest = "seed-ask-home-test";
    internal const string AskFullRate = "seed-ask-full-rate";
    internal const string AskRate = "seed-ask-rate";
    internal const string AskRegion = "seed-ask-region";
    internal const string AskTestMonth = "seed-ask-test-month";
    internal const string AskUntreated = "seed-ask-untreated";
    internal const string BelowFloor = "seed-below-floor";
    internal const string Coated = "seed-coated";
    internal const string CoatedBesideBare = "seed-coated-beside-bare";
    internal const string CoatingOutsideInert = "seed-coating-outside-inert";
    internal const string CountUnusual = "seed-count-unusual";
    internal const string DormantNotGiven = "seed-dormant-not-given";
    internal const string GerminationRange = "seed-germination-range";
    internal const string HomeTestAgrees = "seed-home-test-agrees";
    internal const string HomeTestBuyNew = "seed-home-test-buy-new";
    internal const string HomeTestCapped = "seed-home-test-capped";
    internal const string HomeTestDiffers = "seed-home-test-differs";
    internal const string HomeTestFewSeeds = "seed-home-test-few-seeds";
    internal const string HomeTestWeak = "seed-home-test-weak";
    internal const string Inoculate = "seed-inoculate";
    internal const string LowPureLive = "seed-low-pure-live";
    internal const string MuchHardOrDormant = "seed-much-hard-or-dormant";
    internal const string MuchInert = "seed-much-inert";
    internal const string MuchWeed = "seed-much-weed";
    internal const string Noxious = "seed-noxious";
    internal const string OutOfTolerance = "seed-out-of-tolerance";
    internal const string Preinoculated = "seed-preinoculated";
    internal const string RateAboveRange = "seed-rate-above-range";
    internal const string RateBelowRange = "seed-rate-below-range";
    internal const string RateFactorTwice = "seed-rate-factor-twice";
    internal const string TagAssumption = "seed-tag-assumption";
    internal const string TagLineAside = "seed-tag-line-aside";
    internal const string TagPartMissing = "seed-tag-part-missing";
    internal const string TagPureLiveDiffers = "seed-tag-pure-live-differs";
    internal const string TagTooMuch = "seed-tag-too-much";
    internal const string TestOld = "seed-test-old";
    internal const string Treated = "seed-treated";
    internal const string TreatedLegume = "seed-treated-legume";
    internal const string TreatedOnSurface = "seed-treated-on-surface";
}
