namespace PlotAgronomy.PlanFiles;

/// <summary>The plot of a plan file: outline, sides, what stands there.</summary>
internal static class PlotShapes
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
            new("place", FieldKind.Choice, "State or province the plot lies in.") { Choices = PlanVocabulary.Places.Words },
            new("plantingRegion", FieldKind.Choice, "Region by which planting dates are found; left out, that of the place.")
            {
                Choices = PlanVocabulary.PlantingRegions.Words,
            },
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
}
