using System.Text.Json;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.PlanFiles;

/// <summary>The text of a seed tag as it stands: a list of its lines, or one text with line breaks.</summary>
internal sealed class PlanTag : PlanValue<SeedTag>
{
    private const string Example = "Pure seed 98.5 %";

    internal override string InWords => $"list of the tag's lines, such as `{Example}`, or one text with line breaks";

    internal override void Describe(Utf8JsonWriter schema)
    {
        schema.WriteStartArray("anyOf");
        schema.WriteStartObject();
        schema.WriteString("type", "string");
        schema.WriteNumber("maxLength", (int)PlanLimits.All["tag-length"]);
        schema.WriteEndObject();
        schema.WriteStartObject();
        schema.WriteString("type", "array");
        schema.WriteStartObject("items");
        schema.WriteString("type", "string");
        schema.WriteEndObject();
        schema.WriteNumber("maxItems", (int)PlanLimits.All["tag-lines"]);
        schema.WriteEndObject();
        schema.WriteEndArray();
    }

    internal override bool TryRead(
        PlanNode node,
        PlanPart at,
        [System.Diagnostics.CodeAnalysis.MaybeNullWhen(false)] out SeedTag value
    )
    {
        value = null;
        bool isList = node.Kind == PlanNodeKind.Array && node.Items.All(i => i.Kind == PlanNodeKind.Text);
        if (!isList && node.Kind != PlanNodeKind.Text)
        {
            at.Report(node, $"expected the lines of the tag, such as '{Example}', found {node.Describe()}");
            return false;
        }

        string text = isList ? string.Join('\n', node.Items.Select(i => i.Text)) : node.Text;
        if (text.Length > PlanLimits.All["tag-length"] || node.Items.Count > PlanLimits.All["tag-lines"])
        {
            at.Report(node, "longer than any tag");
            return false;
        }

        if (text.Any(c => char.IsControl(c) && c is not ('\n' or '\r' or '\t')))
        {
            at.Report(node, "a tag has no control characters but line breaks");
            return false;
        }

        var reading = SeedTag.Read(text);
        foreach (string problem in reading.Problems)
        {
            at.Report(LineOf(node, problem), problem);
        }

        foreach (var noticed in reading.OfReading?.All ?? [])
        {
            at.Tell(node, noticed.Text);
        }

        value = reading.Tag;
        return value is not null;
    }

    /// <summary>A tag is written by its parts: the words in which it was typed are not kept.</summary>
    internal override PlanNode? Write(SeedTag value, string path, List<PlanProblem> refusals) => null;

    private static PlanNode LineOf(PlanNode node, string problem) =>
        node.Items.FirstOrDefault(i =>
            i.Text.Trim() is { Length: > 0 } line && problem.Contains($"'{line}'", StringComparison.Ordinal)
        ) ?? node;
}
