namespace PlotAgronomy.Soil;

/// <summary>The codes of this room's findings and questions, as its tables hold them.</summary>
internal static class SoilCodes
{
    internal const string AcidityMissing = "soil-acidity-missing";
    internal const string AcidityNoneAboveStart = "soil-acidity-none-above-start";
    internal const string AcidityOutsideDomain = "soil-acidity-outside-domain";
    internal const string AcidityTakenAsZero = "soil-acidity-taken-as-zero";
    internal const string AskAcidity = "soil-ask-acidity";
    internal const string AskFreeLime = "soil-ask-free-lime";
    internal const string AskExtractant = "soil-ask-extractant";
    internal const string AskReport = "soil-ask-report";
    internal const string AskSampledDay = "soil-ask-sampled-day";
    internal const string AskTexture = "soil-ask-texture";
    internal const string AskWaterPh = "soil-ask-water-ph";
    internal const string BufferAboveStart = "soil-buffer-above-start";
    internal const string BufferMissing = "soil-buffer-missing";
    internal const string BufferPlaceholder = "soil-buffer-placeholder";
    internal const string CalciumInflated = "soil-calcium-inflated";
    internal const string CapacityDiffers = "soil-capacity-differs";
    internal const string CapacityUnlikely = "soil-capacity-unlikely";
    internal const string CationMissing = "soil-cation-missing";
    internal const string CationsExceedCapacity = "soil-cations-exceed-capacity";
    internal const string DepthAssumed = "soil-depth-assumed";
    internal const string DepthDiffers = "soil-depth-differs";
    internal const string DoubledSince = "soil-doubled-since";
    internal const string ExtractantConverted = "soil-extractant-converted";
    internal const string ExtractantMissing = "soil-extractant-missing";
    internal const string ExtractantNoEquation = "soil-extractant-no-equation";
    internal const string ExtractantNotPrograms = "soil-extractant-not-programs";
    internal const string MagnesiumLow = "soil-magnesium-low";
    internal const string OxideNotPrograms = "soil-oxide-not-programs";
    internal const string OxideTypedAsElement = "soil-oxide-typed-as-element";
    internal const string PhBufferContradict = "soil-ph-buffer-contradict";
    internal const string PhBufferSwapped = "soil-ph-buffer-swapped";
    internal const string PhDecimalPoint = "soil-ph-decimal-point";
    internal const string PhImpossible = "soil-ph-impossible";
    internal const string PhUnlikely = "soil-ph-unlikely";
    internal const string PotassiumOverMagnesium = "soil-potassium-over-magnesium";
    internal const string ReadingTwice = "soil-reading-twice";
    internal const string ReportFromFuture = "soil-report-from-future";
    internal const string ReportOld = "soil-report-old";
    internal const string ReportUndated = "soil-report-undated";
    internal const string SaltPhAboveWater = "soil-salt-ph-above-water";
    internal const string SampleDeep = "soil-sample-deep";
    internal const string SampleShallow = "soil-sample-shallow";
    internal const string SaturationDiffers = "soil-saturation-differs";
    internal const string SaturationSum = "soil-saturation-sum";
    internal const string UnitAsk = "soil-unit-ask";
    internal const string UnitNotPrograms = "soil-unit-not-programs";
    internal const string ValueHighForUnit = "soil-value-high-for-unit";
}
