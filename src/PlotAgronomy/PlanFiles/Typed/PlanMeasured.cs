using System.Globalization;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>A printed number, or the limit that it lies below: <c>34</c> or <c>"&lt;5"</c>.</summary>
/// <param name="limit">Id of the most that is taken.</param>
internal sealed class PlanMeasured(string limit) : PlanValue<(double Value, bool IsUpperLimit)>
{
    private const string Below = "<";

    private readonly PlanValue<double> number = Value.NumberTo<double>(limit);

    internal override string InWords => $"{number.InWords}, or `\"<5\"` where the report prints less than 5";

    internal override void Describe(Utf8JsonWriter schema)
    {
        schema.WriteStartArray("anyOf");
        schema.WriteStartObject();
        number.Describe(schema);
        schema.WriteEndObject();
        schema.WriteStartObject();
        schema.WriteString("type", "string");
        schema.WriteString("pattern", "^ *< *[0-9]+([.][0-9]+)? *$");
        schema.WriteEndObject();
        schema.WriteEndArray();
    }

    internal override bool TryRead(PlanNode node, PlanPart at, out (double Value, bool IsUpperLimit) value)
    {
        string text = node.Text.Trim();
        bool isBelow = node.Kind == PlanNodeKind.Text && text.StartsWith(Below, StringComparison.Ordinal);
        var digits = isBelow
            ? new PlanNode(PlanNodeKind.Number, node.Path, text[Below.Length..].Trim()) { Line = node.Line, Column = node.Column }
            : node;
        bool read = number.TryRead(digits, at, out double found);
        value = (found, isBelow);
        return read;
    }

    internal override PlanNode? Write((double Value, bool IsUpperLimit) value, string path, List<PlanProblem> refusals) =>
        value.IsUpperLimit
            ? new PlanNode(PlanNodeKind.Text, path, $"{Below}{value.Value.ToString(CultureInfo.InvariantCulture)}")
            : number.Write(value.Value, path, refusals);
}
