using System.Text.Json;
using System.Text.RegularExpressions;
using PlotAgronomy.Liming;

namespace PlotAgronomy.PlanFiles;

/// <summary>What a label states in an index, with its unit: <c>62 %</c> or <c>1240 lb/ton</c>; a bare number in the unit of the
/// index.</summary>
/// <param name="index">Field with the index.</param>
internal sealed partial class PlanLimeFigure(PlanField<LimeIndex> index) : PlanValue<double>
{
    private readonly PlanValue<double> bare = Value.NumberTo<double>("label-figure-high");

    internal override string InWords =>
        "figure with its unit, such as `62 %` or `1240 lb/ton`; a bare number is in that of the index";

    internal override void Describe(Utf8JsonWriter schema)
    {
        schema.WriteStartArray("anyOf");
        schema.WriteStartObject();
        bare.Describe(schema);
        schema.WriteEndObject();
        schema.WriteStartObject();
        schema.WriteString("type", "string");
        SchemaText.WriteNames(schema, "examples", ["62 %", "1240 lb/ton"]);
        schema.WriteEndObject();
        schema.WriteEndArray();
    }

    internal override bool TryRead(PlanNode node, PlanPart at, out double value)
    {
        value = 0;
        if (node.Kind != PlanNodeKind.Text)
        {
            return bare.TryRead(node, at, out value);
        }

        if (WithUnit().Match(node.Text) is not { Success: true } typed)
        {
            at.Report(node, $"expected a figure with its unit, such as '62 %' or '1240 lb/ton', found {node.Describe()}");
            return false;
        }

        if (at.Find(index) is not { } stated)
        {
            return false;
        }

        string unit = typed.Groups["percent"].Success ? "%" : "lb/ton";
        if (unit != stated.Unit)
        {
            at.Report(
                node,
                $"the {stated.Name} is stated in {stated.Unit}, found '{node.Text}': is it another figure of the label?"
            );
            return false;
        }

        string digits = typed.Groups["number"].Value.Replace(",", "", StringComparison.Ordinal);
        return bare.TryRead(
            new PlanNode(PlanNodeKind.Number, node.Path, digits) { Line = node.Line, Column = node.Column },
            at,
            out value
        );
    }

    internal override PlanNode? Write(double value, string path, List<PlanProblem> refusals) => bare.Write(value, path, refusals);

    [GeneratedRegex(
        @"^\s*(?<number>[0-9]{1,3}(?:,[0-9]{3})+|[0-9]{1,6}(?:\.[0-9]+)?)"
            + @"\s*(?:(?<percent>%|percent)|(?:lbs?|pounds?)\s*(?:/|per|a)\s*ton)\s*$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex WithUnit();
}
