namespace PlotAgronomy.PlanFiles;

/// <summary>What a plan file has on offer.</summary>
internal static class MaterialShapes
{
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
}
