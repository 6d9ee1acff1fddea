namespace PlotAgronomy.Nutrients;

/// <summary>The codes of this room's findings and questions, as its tables hold them.</summary>
internal static class NutrientCodes
{
    internal const string AcidSoilPhosphate = "nutrient-acid-soil-phosphate";
    internal const string AskRatings = "nutrient-ask-ratings";
    internal const string AskSystem = "nutrient-ask-system";
    internal const string AskTest = "nutrient-ask-test";
    internal const string BeyondPrintedTable = "nutrient-beyond-printed-table";
    internal const string BoronDiscouraged = "nutrient-boron-discouraged";
    internal const string BoronSensitiveKind = "nutrient-boron-sensitive-kind";
    internal const string BoronToxicity = "nutrient-boron-toxicity";
    internal const string CurveTurnsUp = "nutrient-curve-turns-up";
    internal const string FactMissing = "nutrient-fact-missing";
    internal const string GridBreaksPattern = "nutrient-grid-breaks-pattern";
    internal const string InstitutionsMixed = "nutrient-institutions-mixed";
    internal const string KindWithoutRow = "nutrient-kind-without-row";
    internal const string LegalMaximum = "nutrient-legal-maximum";
    internal const string LegumeCreditLower = "nutrient-legume-credit-lower";
    internal const string LegumeSownTogether = "nutrient-legume-sown-together";
    internal const string MagnesiumDolomite = "nutrient-magnesium-dolomite";
    internal const string MaintenancePrinted = "nutrient-maintenance-printed";
    internal const string MemoryByName = "nutrient-memory-by-name";
    internal const string NitrogenOnLegume = "nutrient-nitrogen-on-legume";
    internal const string NitrogenOutsideTable = "nutrient-nitrogen-outside-table";
    internal const string NitrogenSingleDose = "nutrient-nitrogen-single-dose";
    internal const string NitrogenUninoculated = "nutrient-nitrogen-uninoculated";
    internal const string NitrogenYieldNeeded = "nutrient-nitrogen-yield-needed";
    internal const string NoCropRow = "nutrient-no-crop-row";
    internal const string NoShareCounts = "nutrient-no-share-counts";
    internal const string NoUpperLimit = "nutrient-no-upper-limit";
    internal const string NotRated = "nutrient-not-rated";
    internal const string NothingCarriedOff = "nutrient-nothing-carried-off";
    internal const string Override = "nutrient-override";
    internal const string PrintedCrop = "nutrient-printed-crop";
    internal const string PrintedDiffers = "nutrient-printed-differs";
    internal const string RangeOnly = "nutrient-range-only";
    internal const string RatesNotHeld = "nutrient-rates-not-held";
    internal const string RemovalIgnored = "nutrient-removal-ignored";
    internal const string SampleDepth = "nutrient-sample-depth";
    internal const string SecondaryFactMissing = "nutrient-secondary-fact-missing";
    internal const string SecondaryTestMissing = "nutrient-secondary-test-missing";
    internal const string SecondaryTestNotAccepted = "nutrient-secondary-test-not-accepted";
    internal const string SoilClassAssumed = "nutrient-soil-class-assumed";
    internal const string SystemSuperseded = "nutrient-system-superseded";
    internal const string TakenAs = "nutrient-taken-as";
    internal const string TestMissing = "nutrient-test-missing";
    internal const string TestNotAccepted = "nutrient-test-not-accepted";
    internal const string UreaNeedsRain = "nutrient-urea-needs-rain";
    internal const string YearlyCap = "nutrient-yearly-cap";
    internal const string YesWithoutRate = "nutrient-yes-without-rate";
    internal const string YieldUnusual = "nutrient-yield-unusual";
}
