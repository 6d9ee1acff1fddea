namespace PlotAgronomy.PlanFiles;

/// <summary>The plan file, version 1. Every object, field, unit and allowed word is declared in this folder.</summary>
internal static class PlanShapes
{
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
            new("plot", FieldKind.Object, "The plot.") { Required = true, Shape = PlotShapes.Plot },
            new("soilReport", FieldKind.Object, "The laboratory's report.") { Required = true, Shape = ReportShapes.SoilReport },
            new("methods", FieldKind.Object, "The published systems to use.") { Required = true, Shape = GrowingShapes.Methods },
            new("growing", FieldKind.Object, "What is to be grown.") { Required = true, Shape = GrowingShapes.Growing },
            new("materials", FieldKind.Object, "What is on offer.") { Required = true, Shape = MaterialShapes.Materials },
            new("spreader", FieldKind.Object, "The spreader.") { Required = true, Shape = SpreaderShapes.Spreader },
        ]
    );
}
