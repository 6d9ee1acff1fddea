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

    private static void Write(Utf8JsonWriter json, IPlanDefinition part)
    {
        json.WriteString("description", part.Meaning);
        part.Define(json);
    }

    private static IEnumerable<IPlanDefinition> Below(IPlanDefinition part) =>
        part.Fields.Select(f => f.Definition).OfType<IPlanDefinition>().SelectMany(d => Below(d).Prepend(d));
}
