using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>What several fields write into the schema in the same words.</summary>
internal static class SchemaText
{
    /// <summary>Refers to a part that has a name of its own.</summary>
    internal static void WriteReference(Utf8JsonWriter json, string name) => json.WriteString("$ref", $"#/$defs/{name}");

    /// <summary>What a field may hold, or that nothing is stated where it may be left out.</summary>
    internal static void WriteOrNotStated(Utf8JsonWriter json, PlanField field)
    {
        if (!field.MayBeNotStated)
        {
            field.Describe(json);
            return;
        }

        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        field.Describe(json);
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("const", PlanPart.NotStated);
        json.WriteEndObject();
        json.WriteEndArray();
    }

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
}
