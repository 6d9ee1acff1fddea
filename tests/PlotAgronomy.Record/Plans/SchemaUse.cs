using System.Text.Json.Nodes;

namespace PlotAgronomy.Record.Plans;

/// <summary>Which fields and words of the plan's schema a set of plans makes use of.</summary>
internal sealed class SchemaUse(JsonObject schema)
{
    /// <summary>A drawn plan is text alone, without a file beside it.</summary>
    private static readonly string[] NeedsFile = ["plot.outlineFile"];

    private readonly Dictionary<string, (int Present, int Absent)> fields = [];
    private readonly Dictionary<string, int> words = [];

    internal void Count(JsonNode plan) => Count(schema, plan, "plan");

    /// <summary>Optional fields that always or never stand there, and words never used.</summary>
    internal IEnumerable<string> Missing() =>
        fields.Where(f => f.Value.Present == 0 && !NeedsFile.Contains(f.Key)).Select(f => $"never there: {f.Key}")
            .Concat(fields.Where(f => f.Value.Absent == 0).Select(f => $"always there: {f.Key}"))
            .Concat(words.Where(w => w.Value == 0).Select(w => $"never used: {w.Key}"));

    private void Count(JsonObject part, JsonNode? value, string name)
    {
        if (part["$ref"] is { } reference)
        {
            string word = ((string)reference!).Split('/')[^1];
            Count(schema["$defs"]![word]!.AsObject(), value, word);
            return;
        }

        if (part["anyOf"] is JsonArray choices)
        {
            // The other choice is the word that says nothing.
            Count(choices[0]!.AsObject(), value, name);
            return;
        }

        foreach (var choice in part["enum"]?.AsArray() ?? [])
        {
            string key = $"{name} = {(string)choice!}";
            words[key] = words.GetValueOrDefault(key) + ((string)choice! == (string?)value ? 1 : 0);
        }

        foreach (var item in part["items"] is JsonObject row && value is JsonArray list ? list : [])
        {
            Count(part["items"]!.AsObject(), item, name);
        }

        foreach (var (field, inner) in part["properties"]?.AsObject() ?? [])
        {
            CountField(part, inner!.AsObject(), value!.AsObject(), name, field);
        }
    }

    private void CountField(JsonObject part, JsonObject inner, JsonObject of, string name, string field)
    {
        bool isThere = of.TryGetPropertyValue(field, out var value);
        bool isRequired = part["required"]?.AsArray().Any(r => (string)r! == field) == true;
        if (!isRequired)
        {
            var (present, absent) = fields.GetValueOrDefault($"{name}.{field}");
            fields[$"{name}.{field}"] = isThere ? (present + 1, absent) : (present, absent + 1);
        }

        if (isThere)
        {
            Count(inner, value, $"{name}.{field}");
        }
    }
}
