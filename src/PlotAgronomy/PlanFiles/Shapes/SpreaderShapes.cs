namespace PlotAgronomy.PlanFiles;

/// <summary>The spreader of a plan file and its weighed runs.</summary>
internal static class SpreaderShapes
{
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
}
