using System.Text.Json;
using PlotAgronomy.PlanFiles;

namespace PlotAgronomy.OfflinePage.Fields;

/// <summary>Every part of a plan and its fields, read from the schema that the library writes: a field that the library declares
/// is on the page without a line of its own.</summary>
internal static class PlanDeclarations
{
    internal const string WholePlan = "plan";

    private static readonly Lazy<IReadOnlyDictionary<string, PartDeclaration>> Parts = new(Read);

    internal static PartDeclaration Find(string name) => Parts.Value[name];

    private static Dictionary<string, PartDeclaration> Read()
    {
        using var schema = JsonDocument.Parse(PlanSchema.ToJson());
        var root = schema.RootElement;
        var definitions = root.GetProperty("$defs");
        var parts = definitions.EnumerateObject().Where(d => d.Value.TryGetProperty("properties", out _))
            .Select(d => Part(d.Name, d.Value, definitions));
        return parts.Prepend(Part(WholePlan, root, definitions)).ToDictionary(p => p.Name);
    }

    private static PartDeclaration Part(string name, JsonElement part, JsonElement definitions)
    {
        string[] required = part.TryGetProperty("required", out var names) ? Texts(names) : [];
        var fields = part.GetProperty("properties").EnumerateObject()
            .Where(f => f.Name is not ("$schema" or "planVersion"))
            .Select(f => Field(f.Name, f.Value, definitions) with { IsRequired = required.Contains(f.Name) });
        return new(name, Text(part, "description"), [.. fields]);
    }

    private static FieldDeclaration Field(string name, JsonElement field, JsonElement definitions)
    {
        var ways = field.TryGetProperty("anyOf", out var any) ? any.EnumerateArray().ToArray() : [field];
        bool isOfLines = ways.Any(w => Text(w, "type") == "string") && ways.Any(w => Text(w, "type") == "array");
        return isOfLines
            ? new(name, FieldSort.Lines, Text(field, "description"))
            : Value(name, ways[0], definitions) with { Meaning = Text(field, "description") };
    }

    private static FieldDeclaration Value(string name, JsonElement value, JsonElement definitions)
    {
        if (value.TryGetProperty("$ref", out var reference))
        {
            string part = reference.GetString()!.Split('/')[^1];
            bool isCorner = !definitions.GetProperty(part).TryGetProperty("properties", out _);
            return isCorner
                ? new(name, FieldSort.Corner, "") { Examples = ["38.0412, -84.5037"] }
                : new(name, FieldSort.Part, "") { PartName = part };
        }

        if (value.TryGetProperty("enum", out var choices))
        {
            return new(name, FieldSort.Choice, "") { Choices = Texts(choices) };
        }

        return Text(value, "type") switch
        {
            "array" => List(name, Value("", value.GetProperty("items"), definitions)),
            "boolean" => new(name, FieldSort.Flag, ""),
            "number" => new(name, FieldSort.Number, "") { Low = Raw(value, "minimum"), High = Raw(value, "maximum") },
            _ => new(name, FieldSort.Text, "") { Examples = value.TryGetProperty("examples", out var such) ? Texts(such) : [] },
        };
    }

    private static FieldDeclaration List(string name, FieldDeclaration item) =>
        new(name, FieldSort.List, "") { PartName = item.PartName, Item = item.Sort == FieldSort.Part ? null : item };

    private static string[] Texts(JsonElement list) => [.. list.EnumerateArray().Select(i => i.GetString()!)];

    private static string Text(JsonElement part, string name) => part.TryGetProperty(name, out var text) ? text.GetString()! : "";

    private static string? Raw(JsonElement part, string name) =>
        part.TryGetProperty(name, out var number) ? number.GetRawText() : null;
}
