using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>True or false.</summary>
internal sealed class PlanFlag : PlanValue<bool>
{
    internal override string InWords => "true or false";

    internal override void Describe(Utf8JsonWriter schema) => schema.WriteString("type", "boolean");

    internal override bool TryRead(PlanNode node, PlanPart at, out bool value)
    {
        value = node.Text == PlanNode.True;
        if (node.Kind == PlanNodeKind.TrueOrFalse)
        {
            return true;
        }

        at.Report(node, $"expected true or false, found {node.Describe()}");
        return false;
    }

    internal override PlanNode Write(bool value, string path, List<PlanProblem> refusals) =>
        new(PlanNodeKind.TrueOrFalse, path, value ? PlanNode.True : PlanNode.False);
}
