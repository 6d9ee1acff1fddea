using System.Text;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>The JSON Schema of a plan file, written from the same shapes that the reader checks.</summary>
public static class PlanSchema
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes the schema (JSON Schema draft 2020-12).</summary>
    /// <returns>JSON text.</returns>
    public static string ToJson()
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", "PlotAgronomy plan file, version 1");
            WriteShape(json, PlanShapes.Plan);
            json.WriteStartObject("$defs");
            foreach (var shape in Below(PlanShapes.Plan).DistinctBy(s => s.Name).OrderBy(s => s.Name, StringComparer.Ordinal))
            {
                json.WriteStartObject(shape.Name);
                WriteShape(json, shape);
                json.WriteEndObject();
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static IEnumerable<PlanShape> Below(PlanShape shape) =>
        shape.Fields.Select(f => f.Shape).OfType<PlanShape>().SelectMany(s => Below(s).Prepend(s));

    private static void WriteShape(Utf8JsonWriter json, PlanShape shape)
    {
        json.WriteString("description", shape.Meaning);
        if (shape.IsPairOfNumbers)
        {
            json.WriteString("type", "array");
            json.WriteStartObject("items");
            json.WriteString("type", "number");
            json.WriteEndObject();
            json.WriteNumber("minItems", 2);
            json.WriteNumber("maxItems", 2);
            return;
        }

        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        foreach (var field in shape.Fields)
        {
            json.WriteStartObject(field.Name);
            WriteField(json, field);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        WriteNames(json, "required", shape.Fields.Where(f => f.Required).Select(f => f.Name));
        if (!shape.ExactlyOneOf.IsDefaultOrEmpty)
        {
            json.WriteStartArray("allOf");
            foreach (var group in shape.ExactlyOneOf)
            {
                json.WriteStartObject();
                json.WriteStartArray("oneOf");
                foreach (string name in group)
                {
                    json.WriteStartObject();
                    WriteNames(json, "required", [name]);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteBoolean("additionalProperties", false);
    }

    private static void WriteField(Utf8JsonWriter json, PlanField field)
    {
        json.WriteString("description", field.Meaning);
        switch (field.Kind)
        {
            case FieldKind.Object:
                json.WriteString("$ref", $"#/$defs/{field.Shape!.Name}");
                return;
            case FieldKind.List:
                json.WriteString("type", "array");
                json.WriteStartObject("items");
                json.WriteString("$ref", $"#/$defs/{field.Shape!.Name}");
                json.WriteEndObject();
                if (field.FewestItems > 0)
                {
                    json.WriteNumber("minItems", field.FewestItems);
                }

                return;
            case FieldKind.Choice:
                WriteNames(json, "enum", field.Choices);
                return;
            case FieldKind.Flag:
                json.WriteString("type", "boolean");
                return;
            case FieldKind.Number:
                json.WriteString("type", "number");
                if (field.Range is var (min, max))
                {
                    json.WriteNumber("minimum", min);
                    json.WriteNumber("maximum", max);
                }

                return;
            case FieldKind.Date:
                json.WriteString("type", "string");
                json.WriteString("format", "date");
                break;
            default:
                json.WriteString("type", "string");
                json.WriteNumber("minLength", 1);
                break;
        }

        if (field.Example.Length > 0)
        {
            WriteNames(json, "examples", [field.Example]);
        }
    }

    private static void WriteNames(Utf8JsonWriter json, string property, IEnumerable<string> names)
    {
        var all = names.ToList();
        if (all.Count == 0)
        {
            return;
        }

        json.WriteStartArray(property);
        foreach (string name in all)
        {
            json.WriteStringValue(name);
        }

        json.WriteEndArray();
    }
}
