namespace PlotAgronomy.Planning;

/// <summary>The plan file, version 1: every object, field, unit and allowed word.</summary>
internal static class PlanShapes
{
    internal static readonly PlanShape Coordinates = new("coordinates", "Latitude and longitude in degrees, WGS84.", [])
    {
        IsPairOfNumbers = true,
    };

    internal static readonly PlanShape Sides = new(
        "sides",
        "Taped or paced sides of the plot.",
        [
            new("shape", FieldKind.Choice, "Form of the plot.") { Required = true, Choices = PlanVocabulary.PlotForms.Words },
            new("length", FieldKind.Amount, "Long side of a rectangle, or the height between the parallel sides of a trapezoid.")
            {
                Example = "210 ft",
            },
            new("width", FieldKind.Amount, "Short side of a rectangle.") { Example = "130 ft" },
            new("a", FieldKind.Amount, "First side of a triangle; first parallel side of a trapezoid.") { Example = "200 ft" },
            new("b", FieldKind.Amount, "Second side of a triangle; second parallel side of a trapezoid.") { Example = "180 ft" },
            new("c", FieldKind.Amount, "Third side of a triangle.") { Example = "150 ft" },
            new("radius", FieldKind.Amount, "Radius of a circle.") { Example = "60 ft" },
        ]
    );

    internal static readonly PlanShape StandsNow = new(
        "standsNow",
        "What grows on the plot today.",
        [
            new("cover", FieldKind.Choice, "Kind of cover.") { Required = true, Choices = PlanVocabulary.Covers.Words },
            new("kind", FieldKind.Text, "Kind that stands there, by common name.") { Example = "winter rye" },
            new("shareOfFullStand", FieldKind.Number, "How much of a full stand it still is, 0 to 1.") { Range = (0, 1) },
        ]
    );

    internal static readonly PlanShape Plot = new(
        "plot",
        "The plot of land.",
        [
            new("name", FieldKind.Text, "Name of the plot.") { Required = true, Example = "Hollow field" },
            new("sides", FieldKind.Object, "Measured sides.") { Shape = Sides },
            new("outline", FieldKind.List, "Walked corners in order.") { Shape = Coordinates, FewestItems = 3 },
            new("area", FieldKind.Amount, "Area alone; without sides there is no pass plan.") { Example = "0.62 ac" },
            new("texture", FieldKind.Choice, "Soil texture.") { Choices = PlanVocabulary.Textures.Words },
            new("drainage", FieldKind.Choice, "How the soil drains.") { Choices = PlanVocabulary.Drainages.Words },
            new("standsNow", FieldKind.Object, "What stands there now; bare ground when left out.") { Shape = StandsNow },
            new("grewBefore", FieldKind.Text, "Kind that grew there the season before, by common name.") { Example = "soybean" },
            new("use", FieldKind.Choice, "Whether the crop is only browsed or cut and carried off.")
            {
                Required = true,
                Choices = PlanVocabulary.Uses.Words,
            },
        ]
    )
    {
        ExactlyOneOf =
        [
            ["sides", "outline", "area"],
        ],
    };

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
                Example = "Oregon",
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

    internal static readonly PlanShape Methods = new(
        "methods",
        "Which published systems to use; a system resting on unchecked numbers answers only when named here.",
        [
            new("lime", FieldKind.Choice, "Lime requirement method.")
            {
                Required = true,
                Choices = PlanVocabulary.LimeMethods.Words,
            },
            new("nutrients", FieldKind.Choice, "Recommendation system for phosphate and potash.")
            {
                Required = true,
                Choices = PlanVocabulary.NutrientSystems.Words,
            },
            new("legumeCredit", FieldKind.Choice, "Published nitrogen credit for the legume that grew or stands there.")
            {
                Choices = PlanVocabulary.LegumeCredits.Words,
            },
            new("targetPh", FieldKind.Number, "Target pH in place of the method's or the blend's own.") { Range = (5, 7.5) },
        ]
    );

    internal static readonly PlanShape Yield = new(
        "yield",
        "What is expected to be carried off an acre.",
        [
            new("value", FieldKind.Number, "Yield.") { Required = true, Range = (0, 1000) },
            new("unit", FieldKind.Choice, "Unit.") { Required = true, Choices = PlanVocabulary.YieldUnits.Words },
        ]
    );

    internal static readonly PlanShape BlendKind = new(
        "blendKind",
        "One kind to be grown.",
        [
            new("kind", FieldKind.Text, "Kind by common, scientific or market-class name.")
            {
                Required = true,
                Example = "crimson clover",
            },
            new("shareOfFullStand", FieldKind.Number, "Rate divided by the kind's full rate alone for the same method.")
            {
                Range = (0, 2),
            },
            new("rate", FieldKind.Amount, "Seeding rate.") { Example = "12 lb/ac" },
            new("rateIs", FieldKind.Choice, "Whether the rate counts pure live seed or bulk seed.")
            {
                Choices = PlanVocabulary.RateMeanings.Words,
            },
            new("rateFor", FieldKind.Choice, "Sowing method the rate is written for.")
            {
                Choices = PlanVocabulary.SowingMethods.Words,
            },
            new("yield", FieldKind.Object, "Yield of a kind that is cut and carried off; never assumed.") { Shape = Yield },
        ]
    )
    {
        ExactlyOneOf =
        [
            ["shareOfFullStand", "rate"],
        ],
    };

    internal static readonly PlanShape Growing = new(
        "growing",
        "What is to be grown.",
        [
            new("kinds", FieldKind.List, "The kinds of the blend.")
            {
                Required = true,
                Shape = BlendKind,
                FewestItems = 1,
            },
            new("totalShare", FieldKind.Number, "Wanted total of full-stand shares; 1.0 unless stated.") { Range = (0.1, 3) },
        ]
    );

    internal static readonly PlanShape Sieve = new(
        "sieve",
        "One sieve of a fineness test.",
        [
            new("mesh", FieldKind.Number, "US standard sieve.") { Required = true, Range = (2, 400) },
            new("passing", FieldKind.Amount, "Part of the material that passes it.") { Required = true, Example = "60 %" },
        ]
    );

    internal static readonly PlanShape LimeLabelFigure = new(
        "limeLabelFigure",
        "What a label or dealer states in one state's terms.",
        [
            new("index", FieldKind.Choice, "Index it is stated in.")
            {
                Required = true,
                Choices = PlanVocabulary.LimeIndices.Words,
            },
            new("value", FieldKind.Number, "Figure: lb/ton for ENP, ECCE and ENM, percent for the others.")
            {
                Required = true,
                Range = (0, 5000),
            },
        ]
    );

    internal static readonly PlanShape LimeMaterial = new(
        "limeMaterial",
        "A liming material on offer.",
        [
            new("name", FieldKind.Text, "Name.") { Required = true, Example = "ground dolomite" },
            new("form", FieldKind.Choice, "Form.") { Required = true, Choices = PlanVocabulary.LimingForms.Words },
            new("cce", FieldKind.Number, "Calcium carbonate equivalent, percent.") { Required = true, Range = (0, 185) },
            new("moisture", FieldKind.Amount, "Moisture.") { Example = "3 %" },
            new("magnesium", FieldKind.Amount, "Magnesium, Mg.") { Example = "10 %" },
            new("sieves", FieldKind.List, "Fineness.") { Shape = Sieve },
            new("labelFigures", FieldKind.List, "Figures the label or the dealer states; they go before computed ones.")
            {
                Shape = LimeLabelFigure,
            },
            new(
                "poundsEqualToOneTon",
                FieldKind.Number,
                "North Carolina labels only: pounds that equal one ton of standard lime."
            )
            {
                Range = (500, 20000),
            },
            new("package", FieldKind.Amount, "Package size.") { Required = true, Example = "40 lb" },
            new("price", FieldKind.Number, "Price of one package in the plan's currency.") { Required = true, Range = (0, 1e6) },
        ]
    );

    internal static readonly PlanShape Fertilizer = new(
        "fertilizer",
        "A fertilizer on offer.",
        [
            new("name", FieldKind.Text, "Name.") { Required = true, Example = "complete 19-19-19" },
            new("analysis", FieldKind.Text, "Guaranteed N-P2O5-K2O in percent.") { Required = true, Example = "19-19-19" },
            new("substance", FieldKind.Choice, "What a straight material is made of; a mixture when left out.")
            {
                Choices = PlanVocabulary.Substances.Words,
            },
            new("sulfur", FieldKind.Amount, "Guaranteed S.") { Example = "4 %" },
            new("magnesium", FieldKind.Amount, "Guaranteed Mg.") { Example = "11 %" },
            new("boron", FieldKind.Amount, "Guaranteed B.") { Example = "0.5 %" },
            new("package", FieldKind.Amount, "Package size.") { Required = true, Example = "50 lb" },
            new("price", FieldKind.Number, "Price of one package in the plan's currency.") { Required = true, Range = (0, 1e6) },
        ]
    );

    internal static readonly PlanShape SeedLot = new(
        "seedLot",
        "A lot of seed on offer, as its tag says.",
        [
            new("kind", FieldKind.Text, "Kind on the tag.") { Required = true, Example = "crimson clover" },
            new("lot", FieldKind.Text, "Lot mark.") { Example = "A-1" },
            new("pureSeed", FieldKind.Amount, "Pure seed by weight.") { Required = true, Example = "98.5 %" },
            new("germination", FieldKind.Amount, "Germination.") { Required = true, Example = "85 %" },
            new("hardSeed", FieldKind.Amount, "Hard seed.") { Example = "8 %" },
            new("dormantSeed", FieldKind.Amount, "Dormant seed.") { Example = "5 %" },
            new("coating", FieldKind.Amount, "Coating material by weight.") { Example = "34 %" },
            new("tested", FieldKind.Date, "Day, or first day of the month, of the germination test.") { Required = true },
            new("package", FieldKind.Amount, "Package size.") { Required = true, Example = "50 lb" },
            new("price", FieldKind.Number, "Price of one package in the plan's currency.") { Required = true, Range = (0, 1e6) },
        ]
    );

    internal static readonly PlanShape TagKind = new(
        "tagKind",
        "One kind named on the tag of a ready blend.",
        [
            new("kind", FieldKind.Text, "Kind on the tag.") { Required = true, Example = "crimson clover" },
            new("pureSeed", FieldKind.Amount, "Pure seed of the kind by weight, in percent of the whole bag.")
            {
                Required = true,
                Example = "14.7 %",
            },
            new("germination", FieldKind.Amount, "Germination.") { Required = true, Example = "85 %" },
            new("hardSeed", FieldKind.Amount, "Hard seed.") { Example = "8 %" },
            new("dormantSeed", FieldKind.Amount, "Dormant seed.") { Example = "5 %" },
            new(
                "tested",
                FieldKind.Date,
                "Day, or first day of the month, of its germination test, where the tag gives one for this kind."
            ),
        ]
    );

    internal static readonly PlanShape StoreBlend = new(
        "storeBlend",
        "A ready blend as a store sells it, as its tag says.",
        [
            new("name", FieldKind.Text, "What to call it.") { Required = true, Example = "fall plot blend" },
            new("package", FieldKind.Amount, "Net weight of the bag.") { Required = true, Example = "25 lb" },
            new("price", FieldKind.Number, "Price of one bag in the plan's currency.") { Required = true, Range = (0, 1e6) },
            new("claimedArea", FieldKind.Amount, "Area the bag says it plants.") { Required = true, Example = "0.5 ac" },
            new("components", FieldKind.List, "Kinds named on the tag.")
            {
                Required = true,
                Shape = TagKind,
                FewestItems = 1,
            },
            new("otherCrop", FieldKind.Amount, "Seed of other crops.") { Example = "0.8 %" },
            new("inert", FieldKind.Amount, "Inert matter, coating counted in.") { Example = "34.2 %" },
            new("weed", FieldKind.Amount, "Weed seed.") { Example = "0.2 %" },
            new("coating", FieldKind.Amount, "Coating of the whole bag, inside the inert matter.") { Example = "33 %" },
            new("treated", FieldKind.Flag, "Whether the tag says the seed is treated."),
            new("tested", FieldKind.Date, "Day, or first day of the month, of the germination test of the bag.")
            {
                Required = true,
            },
        ]
    );

    internal static readonly PlanShape Materials = new(
        "materials",
        "What is on offer.",
        [
            new("lime", FieldKind.List, "Liming materials.") { Shape = LimeMaterial },
            new("fertilizers", FieldKind.List, "Fertilizers.") { Shape = Fertilizer },
            new("seedLots", FieldKind.List, "Seed lots.")
            {
                Required = true,
                Shape = SeedLot,
                FewestItems = 1,
            },
            new("storeBlends", FieldKind.List, "Ready blends of a store, to be held against plain seed.") { Shape = StoreBlend },
        ]
    );

    internal static readonly PlanShape MeasuredRun = new(
        "measuredRun",
        "A weighed run with this spreader.",
        [
            new("kind", FieldKind.Text, "Seed kind that was run, by common name.") { Required = true, Example = "oats" },
            new("gate", FieldKind.Number, "Gate position on the spreader's own scale.") { Required = true, Range = (0, 1000) },
            new("weighed", FieldKind.Amount, "Weight that came out.") { Required = true, Example = "2.1 lb" },
            new("distance", FieldKind.Amount, "Distance walked.") { Required = true, Example = "200 ft" },
            new("time", FieldKind.Amount, "Time taken.") { Required = true, Example = "45 s" },
        ]
    );

    internal static readonly PlanShape Spreader = new(
        "spreader",
        "The spreader.",
        [
            new("name", FieldKind.Text, "Name.") { Required = true, Example = "shoulder spreader" },
            new("swath", FieldKind.Amount, "Width that one pass covers evenly.") { Required = true, Example = "14 ft" },
            new("hopper", FieldKind.Amount, "Hopper volume.") { Example = "3 gal" },
            new("measuredRuns", FieldKind.List, "Weighed runs, if there are any.") { Shape = MeasuredRun },
        ]
    );

    internal static readonly PlanShape Plan = new(
        "plan",
        "One plot, one planting.",
        [
            new("$schema", FieldKind.Text, "Address of the schema, for editors."),
            new("planVersion", FieldKind.Number, "Version of this format.") { Required = true, Range = (1, 1) },
            new("currency", FieldKind.Text, "The one currency of all prices (ISO 4217).") { Required = true, Example = "USD" },
            new("plantingDate", FieldKind.Date, "Day of planting.") { Required = true },
            new("limeDate", FieldKind.Date, "Day the lime is spread; without it the pH on planting day stays open."),
            new("tillageDepth", FieldKind.Amount, "Depth to which the ground is worked and lime mixed in.") { Example = "5 in" },
            new("method", FieldKind.Choice, "How the seed is planted.")
            {
                Required = true,
                Choices = PlanVocabulary.PlantingMethods.Words,
            },
            new("plot", FieldKind.Object, "The plot.") { Required = true, Shape = Plot },
            new("soilReport", FieldKind.Object, "The laboratory's report.") { Required = true, Shape = SoilReport },
            new("methods", FieldKind.Object, "The published systems to use.") { Required = true, Shape = Methods },
            new("growing", FieldKind.Object, "What is to be grown.") { Required = true, Shape = Growing },
            new("materials", FieldKind.Object, "What is on offer.") { Required = true, Shape = Materials },
            new("spreader", FieldKind.Object, "The spreader.") { Required = true, Shape = Spreader },
        ]
    );
}
