using System.Globalization;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>Latitude and longitude in degrees.</summary>
internal sealed class PlanPair : PlanValue<(double Latitude, double Longitude)>, IPlanDefinition
{
    public string Name => "coordinates";

    public string Meaning => "Latitude and longitude in degrees, WGS84.";

    public IReadOnlyList<PlanField> Fields => [];

    internal override IPlanDefinition Definition => this;

    internal override string InWords => "[latitude, longitude]";

    public void Define(Utf8JsonWriter schema)
    {
        schema.WriteString("type", "array");
        schema.WriteStartObject("items");
        schema.WriteString("type", "number");
        schema.WriteEndObject();
        schema.WriteNumber("minItems", 2);
        schema.WriteNumber("maxItems", 2);
    }

    internal override void Describe(Utf8JsonWriter schema) => SchemaText.WriteReference(schema, Name);

    internal override bool TryRead(PlanNode node, PlanPart at, out (double Latitude, double Longitude) value)
    {
        value = default;
        if (node.Kind != PlanNodeKind.Array || node.Items.Count != 2 || node.Items.Any(i => i.Kind != PlanNodeKind.Number))
        {
            at.Report(node, $"expected a pair of numbers [latitude, longitude] in degrees, found {node.Describe()}");
            return false;
        }

        value = (Degrees(node.Items[0]), Degrees(node.Items[1]));
        return true;
    }

    internal override PlanNode Write((double Latitude, double Longitude) value, string path, List<PlanProblem> refusals) =>
        new(PlanNodeKind.Array, path) { Items = { Number(value.Latitude, path), Number(value.Longitude, path) } };

    private static double Degrees(PlanNode node) => double.Parse(node.Text, CultureInfo.InvariantCulture);

    private static PlanNode Number(double degrees, string path) =>
        new(PlanNodeKind.Number, path, degrees.ToString(CultureInfo.InvariantCulture));
}
