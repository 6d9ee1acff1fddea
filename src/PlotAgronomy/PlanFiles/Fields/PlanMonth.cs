using System.Text.Json;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.PlanFiles;

/// <summary>The month of a germination test as a tag prints it; of a day its month.</summary>
internal sealed class PlanMonth : PlanValue<TestMonth>
{
    private static readonly string[] Examples = ["6/27", "June 2027", "2027-06"];

    internal override string InWords => $"month, such as {string.Join(", ", Examples.Select(e => $"`{e}`"))}";

    internal override void Describe(Utf8JsonWriter schema)
    {
        schema.WriteString("type", "string");
        SchemaText.WriteNames(schema, "examples", Examples);
    }

    internal override bool TryRead(PlanNode node, PlanPart at, out TestMonth value)
    {
        value = default;
        if (!PlanDate.TryRead(node, at, out var typed, out bool mayLackYear))
        {
            return false;
        }

        value = TestMonth.FromYearAndMonth(typed.First.Year, typed.First.Month);
        if (mayLackYear)
        {
            at.Tell(node, $"'{node.Text}' is taken as month and year, as tags print them: {value}");
        }

        return true;
    }

    internal override PlanNode Write(TestMonth value, string path, List<PlanProblem> refusals) =>
        new(PlanNodeKind.Text, path, value.ToString());
}
