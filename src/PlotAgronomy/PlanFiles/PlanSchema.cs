using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>The JSON Schema of a plan file, written from the same declarations that read and write it.</summary>
public static class PlanSchema
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The plan and every part of it, each once, in the order in which they are named.</summary>
    internal static IEnumerable<IPlanDefinition> Definitions =>
        Below(WholePlan.Shape).Prepend(WholePlan.Shape).DistinctBy(d => d.Name);

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
            Write(json, WholePlan.Shape);
            json.WriteStartObject("$defs");
            foreach (var part in Definitions.Skip(1).OrderBy(d => d.Name, StringComparer.Ordinal))
            {
                json.WriteStartObject(part.Name);
                Write(json, part);
                json.WriteEndObject();
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    internal static void WriteReference(Utf8JsonWriter json, IPlanDefinition to) =>
        json.WriteString("$ref", $"#/$defs/{to.Name}");

    /// <summary>A list of names; nothing when there are none.</summary>
    internal static void WriteNames(Utf8JsonWriter json, string property, IEnumerable<string> names)
    {
        string[] all = [.. names];
        if (all.Length == 0)
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

    /// <summary>Fields of which exactly one must be there; nothing when there are none.</summary>
    internal static void WriteOneOf(Utf8JsonWriter json, IEnumerable<string> names)
    {
        string[] all = [.. names];
        if (all.Length == 0)
        {
            return;
        }

        json.WriteStartArray("allOf");
        json.WriteStartObject();
        json.WriteStartArray("oneOf");
        foreach (string name in all)
        {
            json.WriteStartObject();
            WriteNames(json, "required", [name]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, IPlanDefinition part)
    {
        json.WriteString("description", part.Meaning);
        part.Define(json);
    }

    private static IEnumerable<IPlanDefinition> Below(IPlanDefinition part) =>
        part.Fields.Select(f => f.Value.Definition).OfType<IPlanDefinition>().SelectMany(d => Below(d).Prepend(d));
}
