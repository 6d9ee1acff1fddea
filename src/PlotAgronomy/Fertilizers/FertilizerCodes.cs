namespace PlotAgronomy.Fertilizers;

/// <summary>The codes of this room's findings and questions, as its tables hold them.</summary>
internal static class FertilizerCodes
{
    internal const string AmmoniumNitrate = "fertilizer-ammonium-nitrate";
    internal const string AskOffer = "fertilizer-ask-offer";
    internal const string AskSoilTemperature = "fertilizer-ask-soil-temperature";
    internal const string AskWater = "fertilizer-ask-water";
    internal const string AnalysisShare = "fertilizer-analysis-share";
    internal const string BoronNarrow = "fertilizer-boron-narrow";
    internal const string BoronToxic = "fertilizer-boron-toxic";
    internal const string BoronWithSeed = "fertilizer-boron-with-seed";
    internal const string ChlorineUnstated = "fertilizer-chlorine-unstated";
    internal const string CloserSet = "fertilizer-closer-set";
    internal const string GradeTooHigh = "fertilizer-grade-too-high";
    internal const string InoculantContact = "fertilizer-inoculant-contact";
    internal const string ManurePhosphate = "fertilizer-manure-phosphate";
    internal const string ManureVaries = "fertilizer-manure-varies";
    internal const string MixNever = "fertilizer-mix-never";
    internal const string MixSameDay = "fertilizer-mix-same-day";
    internal const string NeedNotKnown = "fertilizer-need-not-known";
    internal const string NitrogenOnLegume = "fertilizer-nitrogen-on-legume";
    internal const string NitrogenOver = "fertilizer-nitrogen-over";
    internal const string NoSetFits = "fertilizer-no-set-fits";
    internal const string NoSoilTest = "fertilizer-no-soil-test";
    internal const string OverNeed = "fertilizer-over-need";
    internal const string PerAcre = "fertilizer-per-acre";
    internal const string PhosphateUnneeded = "fertilizer-phosphate-unneeded";
    internal const string RateHigh = "fertilizer-rate-high";
    internal const string RatioImpossible = "fertilizer-ratio-impossible";
    internal const string SearchStopped = "fertilizer-search-stopped";
    internal const string SearchStoppedShort = "fertilizer-search-stopped-short";
    internal const string SearchUndecided = "fertilizer-search-undecided";
    internal const string SeedContact = "fertilizer-seed-contact";
    internal const string Short = "fertilizer-short";
    internal const string SmallPlot = "fertilizer-small-plot";
    internal const string SplitNitrogen = "fertilizer-split-nitrogen";
    internal const string SurfaceUrea = "fertilizer-surface-urea";
    internal const string SurfaceUreaLoss = "fertilizer-surface-urea-loss";
    internal const string NitrogenAlong = "fertilizer-nitrogen-along";
    internal const string Unneeded = "fertilizer-unneeded";
    internal const string SurfaceUreaMeasured = "fertilizer-surface-urea-measured";
    internal const string Unserved = "fertilizer-unserved";
    internal const string WaterAndWeather = "fertilizer-water-and-weather";
    internal const string WeighOut = "fertilizer-weigh-out";
    internal const string WholePackagesOver = "fertilizer-whole-packages-over";
}
