using System.Text;
using PlotAgronomy.PlanFiles;
using PlotAgronomy.Tests.House;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>The page on the plan file is written from the shapes that the reader checks.</summary>
[Trait("Category", "Generated")]
public class PlanPageTests
{
    private const string Opening = """
        # The plan file

        A plan file describes one plot and one planting. It is JSON; comments and trailing commas are allowed. Amounts are text with a unit, as people write them: `"0.62 ac"`, `"26,000 ft2"`, `"1.5 oz/1000 ft2"`, `"85 %"`. A ton is the US short ton unless `t` or `tonne` is written. Dates are ISO 8601. Unknown fields are mistakes; nothing is guessed. `check FILE` reports every mistake at once with line, column and JSON path.

        [plan.schema.json](plan.schema.json) is the JSON Schema (draft 2020-12), written from the same shapes as this page. Two examples stand in `samples/data/`.

        ## How it is used

        - What the laboratory printed is used first, with its own labels; our own sum stands beside it, and a finding reports a real difference.
        - `methods` names the published systems. A system whose numbers were not yet checked against the publication answers only because it is named there, and says so in a finding.
        - Shares of a full stand must come to 1.0, or to `totalShare`. A rate says whether it counts pure live seed or bulk seed, and for which sowing method it is written.
        - Of several lots of one kind, the one with the cheapest living pound is taken.
        - With an area alone there is no pass plan: the walking distance is area / swath, and a finding asks for sides.
        - On a plot that is only browsed nothing is removed. A crop that is cut and carried off needs its yield.
        - Without `limeDate` the pH on planting day stays open.


        """;

    [Fact]
    public void The_page_is_current() => GeneratedDocsTests.AssertCurrent("docs/plan-file.md", Page());

    private static string Page()
    {
        var page = new StringBuilder(Opening.ReplaceLineEndings("\n"));
        foreach (var shape in Below(PlanShapes.Plan).Prepend(PlanShapes.Plan).DistinctBy(s => s.Name).Where(s => !s.IsPairOfNumbers))
        {
            page.Append($"## {shape.Name}\n\n{shape.Meaning}\n\n");
            foreach (var group in shape.ExactlyOneOf.IsDefaultOrEmpty ? [] : shape.ExactlyOneOf)
            {
                page.Append($"Exactly one of {string.Join(", ", group.Select(g => $"`{g}`"))}.\n\n");
            }

            page.Append("| field | value | meaning |\n|---|---|---|\n");
            foreach (var field in shape.Fields)
            {
                page.Append($"| `{field.Name}`{(field.Required ? " (required)" : "")} | {Value(field)} | {field.Meaning} |\n");
            }

            page.Append('\n');
        }

        return page.ToString().TrimEnd('\n') + "\n";
    }

    private static IEnumerable<PlanShape> Below(PlanShape shape) =>
        shape.Fields.Select(f => f.Shape).OfType<PlanShape>().SelectMany(s => Below(s).Prepend(s));

    private static string Value(PlanField field) => field.Kind switch
    {
        FieldKind.Choice => string.Join(", ", field.Choices.Select(c => $"`{c}`")),
        FieldKind.Object => $"object: {field.Shape!.Name}",
        FieldKind.List => field.Shape!.IsPairOfNumbers ? "list of [latitude, longitude]" : $"list of {field.Shape!.Name}",
        FieldKind.Number => field.Range is var (min, max) ? $"number from {min} to {max}" : "number",
        FieldKind.Flag => "true or false",
        FieldKind.Date => "date, such as `2026-09-12`",
        FieldKind.Amount => $"amount, such as `{field.Example}`",
        _ => field.Example.Length == 0 ? "text" : $"text, such as `{field.Example}`",
    };
}
