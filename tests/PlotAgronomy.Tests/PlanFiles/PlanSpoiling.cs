using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using PlotAgronomy.PlanFiles;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>One mistake or one odd value in a plan: a field dropped, doubled, of another sort, another word the schema allows, an
/// extreme or a plausible amount, an odd text.</summary>
internal static partial class PlanSpoiling
{
    private static readonly string[] Odd = ["", " ", "a\u0000b", "\u001b[31mred", "é ü ß 漢字", "<script>", "-0", "1e400", new('x', 400), "٣", "\uFEFFplot"];

    private static readonly double[] Factors = [0, -1, 0.001, 0.1, 0.5, 0.9, 1.1, 2, 10, 100, 1000, 1e6, 1e-9, 1e12];

    private static readonly string[] Units = ["lb", "oz", "g", "kg", "ton", "t", "ft", "in", "yd", "m", "mi", "ac", "ft2", "ha", "lb/ac", "ton/ac", "kg/ha", "lb/1000 ft2", "%", "gal", "bu", "s", "min", "h", "mph"];

    /// <summary>Words of every choice the schema lists, by the name of the field.</summary>
    private static readonly Lazy<ILookup<string, string>> Words = new(() => WordsOf(JsonNode.Parse(PlanSchema.ToJson())!).ToLookup(w => w.Field, w => w.Word));

    internal static void Spoil(JsonNode plan, Random random)
    {
        var places = Places(plan).ToList();
        var (parent, key, index, value) = places[random.Next(places.Count)];
        switch (random.Next(10))
        {
            case 0:
                Drop(parent, key, index);
                break;
            case 1 when parent is JsonArray list:
                list.Insert(random.Next(list.Count + 1), value?.DeepClone());
                break;
            case 2:
                Put(parent, key, index, random.Next(6) switch { 0 => null, 1 => JsonValue.Create(true), 2 => JsonValue.Create(-3.5), 3 => new JsonArray(), 4 => new JsonObject(), _ => JsonValue.Create("2026-02-30") });
                break;
            case 3:
                Put(parent, key, index, JsonValue.Create(Odd[random.Next(Odd.Length)]));
                break;
            default:
                Put(parent, key, index, Other(key, value, random));
                break;
        }
    }

    private static JsonNode? Other(string? key, JsonNode? value, Random random)
    {
        if (value is not JsonValue leaf)
        {
            return value?.DeepClone();
        }

        if (leaf.TryGetValue(out string? text))
        {
            string[] words = [.. Words.Value[key ?? ""]];
            var amount = Amount().Match(text);
            return words.Length > 0 ? JsonValue.Create(words[random.Next(words.Length)])
                : amount.Success ? JsonValue.Create(Amounted(amount, random))
                : DateOnly.TryParseExact(text, "yyyy-MM-dd", out var day) ? JsonValue.Create(Moved(day, random))
                : JsonValue.Create(Odd[random.Next(Odd.Length)]);
        }

        return leaf.TryGetValue(out double number) ? JsonValue.Create(number * Factors[random.Next(Factors.Length)])
            : leaf.TryGetValue(out bool flag) ? JsonValue.Create(!flag)
            : leaf.DeepClone();
    }

    private static string Amounted(Match amount, Random random)
    {
        double number = double.Parse(amount.Groups[1].Value.Replace(",", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);
        double changed = number * Factors[random.Next(Factors.Length)];
        string unit = random.Next(4) == 0 ? Units[random.Next(Units.Length)] : amount.Groups[2].Value;
        return string.Create(CultureInfo.InvariantCulture, $"{(decimal)changed} {unit}");
    }

    private static string Moved(DateOnly day, Random random)
    {
        int days = new[] { -40_000, -3000, -400, -60, -1, 1, 60, 400, 3000, 60_000 }[random.Next(10)];
        return day.AddDays(days).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
    }

    private static void Put(JsonNode parent, string? key, int index, JsonNode? value)
    {
        if (parent is JsonArray list)
        {
            list[index] = value;
        }
        else
        {
            parent[key!] = value;
        }
    }

    private static void Drop(JsonNode parent, string? key, int index)
    {
        if (parent is JsonArray list)
        {
            list.RemoveAt(index);
        }
        else
        {
            parent.AsObject().Remove(key!);
        }
    }

    private static IEnumerable<(JsonNode Parent, string? Key, int Index, JsonNode? Value)> Places(JsonNode node) => node switch
    {
        JsonObject whole => whole.SelectMany(m => (m.Value is null ? [] : Places(m.Value)).Prepend((whole, m.Key, 0, m.Value))),
        JsonArray list => list.SelectMany((v, i) => (v is null ? [] : Places(v)).Prepend((list, null, i, v))),
        _ => [],
    };

    private static IEnumerable<(string Field, string Word)> WordsOf(JsonNode node) => node switch
    {
        JsonObject whole => whole.SelectMany(m =>
            (m.Value is JsonObject field && (field["enum"] ?? field["anyOf"]?[0]?["enum"]) is JsonArray words ? words.Select(w => (m.Key, w!.ToString())) : [])
            .Concat(m.Value is null ? [] : WordsOf(m.Value))),
        JsonArray list => list.SelectMany(v => v is null ? [] : WordsOf(v)),
        _ => [],
    };

    [GeneratedRegex(@"^([0-9][0-9,]*(?:\.[0-9]+)?) (.+)$")]
    private static partial Regex Amount();
}
