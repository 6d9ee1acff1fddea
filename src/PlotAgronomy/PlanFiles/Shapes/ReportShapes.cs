namespace PlotAgronomy.PlanFiles;

/// <summary>The soil report of a plan file and what the laboratory recommends.</summary>
internal static class ReportShapes
{
    internal static readonly PlanShape Buffer = new(
        "buffer",
        "A buffer reading; useless without the buffer's name.",
        [
            new("name", FieldKind.Choice, "Buffer the laboratory used.")
            {
                Required = true,
                Choices = PlanVocabulary.Buffers.Words,
            },
            new("ph", FieldKind.Number, "Buffer pH as printed.") { Required = true, Range = (0, 14) },
        ]
    );

    internal static readonly PlanShape Charge = new(
        "charge",
        "A charge of the soil, by weight or by volume.",
        [
            new("value", FieldKind.Number, "Value as printed.") { Required = true, Range = (0, 200) },
            new("unit", FieldKind.Choice, "Unit as printed.") { Required = true, Choices = PlanVocabulary.ChargeBases.Words },
        ]
    );

    internal static readonly PlanShape Reading = new(
        "reading",
        "One printed value.",
        [
            new("analyte", FieldKind.Choice, "What was measured, in the form that was printed.")
            {
                Required = true,
                Choices = PlanVocabulary.Analytes.Words,
            },
            new("value", FieldKind.Number, "Value as printed.") { Required = true, Range = (0, 1e6) },
            new("unit", FieldKind.Choice, "Unit as printed.") { Required = true, Choices = PlanVocabulary.Units.Words },
            new("extractant", FieldKind.Choice, "Extracting solution.")
            {
                Required = true,
                Choices = PlanVocabulary.Extractants.Words,
            },
        ]
    );

    internal static readonly PlanShape PrintedLime = new(
        "printedLime",
        "The lime rate the laboratory printed, with its labels.",
        [
            new("rate", FieldKind.Amount, "Rate as printed.") { Required = true, Example = "1.5 ton/ac" },
            new("basis", FieldKind.Choice, "Material the rate is written for.")
            {
                Required = true,
                Choices = PlanVocabulary.LimeBases.Words,
            },
            new("targetPh", FieldKind.Number, "pH it aims at.") { Required = true, Range = (4, 8.5) },
            new("depth", FieldKind.Amount, "Depth of soil it treats.") { Required = true, Example = "8 in" },
            new(
                "institution",
                FieldKind.Text,
                "Institution whose table the laboratory went by; without it, the laboratory itself."
            )
            {
                Example = Institution.NorthCarolina.Name,
            },
        ]
    );

    internal static readonly PlanShape PrintedRecommendation = new(
        "printedRecommendation",
        "What the laboratory itself recommended; used first.",
        [
            new("crop", FieldKind.Text, "Crop it was printed for.") { Required = true, Example = "wildlife plot" },
            new("lime", FieldKind.Object, "Lime.") { Shape = PrintedLime },
            new("nitrogen", FieldKind.Amount, "Nitrogen, N.") { Example = "40 lb/ac" },
            new("phosphate", FieldKind.Amount, "Phosphate, P2O5.") { Example = "60 lb/ac" },
            new("potash", FieldKind.Amount, "Potash, K2O.") { Example = "1.5 lb/1000 ft2" },
        ]
    );

    internal static readonly PlanShape EarlierLime = new(
        "earlierLime",
        "Lime spread before this sample was taken.",
        [
            new("rate", FieldKind.Amount, "Rate spread.") { Required = true, Example = "1 ton/ac" },
            new("spread", FieldKind.Date, "Day it was spread.") { Required = true },
        ]
    );

    internal static readonly PlanShape SoilFacts = new(
        "soilFacts",
        "What some recommendation systems ask beyond the printed values; a system that needs a fact and is not given it says so.",
        [
            new("region", FieldKind.Choice, "Region of the southern states (South Carolina).")
            {
                Choices = PlanVocabulary.Regions.Words,
            },
            new("sampleState", FieldKind.Choice, "State in which the laboratory extracted the sample (Iowa).")
            {
                Choices = PlanVocabulary.SampleStates.Words,
            },
            new("phosphorusSupply", FieldKind.Choice, "Phosphorus-supplying power of the subsoil (Illinois).")
            {
                Choices = PlanVocabulary.Supplies.Words,
            },
            new(
                "exchangeCapacityGroup",
                FieldKind.Choice,
                "Whether the soil counts as low or high in exchange capacity (Illinois)."
            )
            {
                Choices = PlanVocabulary.CapacityGroups.Words,
            },
            new("phosphorusRating", FieldKind.Choice, "Rating of phosphorus that the laboratory printed (South Carolina).")
            {
                Choices = PlanVocabulary.PhosphorusRatings.Words,
            },
            new("buildUp", FieldKind.Choice, "Years over which a poor soil is built up (Missouri).")
            {
                Choices = PlanVocabulary.BuildUpSpans.Words,
            },
        ]
    );

    internal static readonly PlanShape SoilReport = new(
        "soilReport",
        "The laboratory's report as printed.",
        [
            new("laboratory", FieldKind.Text, "Laboratory.") { Required = true, Example = "state laboratory" },
            new("sampled", FieldKind.Date, "Day of sampling.") { Required = true },
            new("depth", FieldKind.Amount, "Depth of sampling.") { Required = true, Example = "6 in" },
            new("soilClass", FieldKind.Choice, "Class of soil.") { Choices = PlanVocabulary.SoilClasses.Words },
            new("waterPh", FieldKind.Number, "Soil pH in water.") { Required = true, Range = (0, 14) },
            new("buffer", FieldKind.Object, "Buffer reading.") { Shape = Buffer },
            new("exchangeableAcidity", FieldKind.Object, "Exchangeable acidity as printed.") { Shape = Charge },
            new("cec", FieldKind.Object, "Cation exchange capacity as printed.") { Shape = Charge },
            new("organicMatter", FieldKind.Amount, "Organic matter.") { Example = "2.4 %" },
            new("humicMatter", FieldKind.Amount, "Humic matter.") { Example = "0.6 %" },
            new("weightPerVolume", FieldKind.Amount, "Weight per volume of the scooped soil.") { Example = "1.12 g/cm3" },
            new("readings", FieldKind.List, "Printed nutrient values.") { Required = true, Shape = Reading },
            new("facts", FieldKind.Object, "What some recommendation systems ask beyond the printed values.")
            {
                Shape = SoilFacts,
            },
            new("recommendation", FieldKind.Object, "The laboratory's own recommendation, if it printed one.")
            {
                Shape = PrintedRecommendation,
            },
            new(
                "earlierLime",
                FieldKind.Object,
                "Lime spread within the year before the sample; leave it out when the printed rate already has it taken off."
            )
            {
                Shape = EarlierLime,
            },
        ]
    );
}
