namespace PlotAgronomy.PlanFiles;

/// <summary>What a plan file grows and by which published systems.</summary>
internal static class GrowingShapes
{
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
}
