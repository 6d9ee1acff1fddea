using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace PlotAgronomy.Sample.Commands;

/// <summary>A plan file that is being filled in. It is a sound plan file from the first answer on: an answer that the library's
/// own reader refuses is taken back.</summary>
/// <remarks>What no field holds stands in comments above the plan: where to go on, and answers that wait for another
/// one.</remarks>
internal sealed partial class PlanDraft
{
    /// <summary>Stands in the name of a plot, so that the sheet says it, until the plot is measured.</summary>
    internal const string NotMeasured = " (not measured: reckoned for 1 acre)";

    internal const string Unnamed = $"My plot{NotMeasured}";

    private static readonly JsonSerializerOptions Layout = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private static readonly JsonDocumentOptions Relaxed = new()
    {
        CommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,
    };

    private readonly Func<string, string?> open;
    private readonly SortedDictionary<string, string> held = new(StringComparer.Ordinal);
    private JsonObject root;
    private PlanFiles.PlanReadResult? settled;
    private int taking;

    private PlanDraft(JsonObject begun, Func<string, string?> open)
    {
        root = begun;
        this.open = open;
    }

    /// <summary>Gets or sets the id of the question to go on with; null where all was asked.</summary>
    internal string? Next { get; set; }

    /// <summary>Gets the plan as it stands; null only inside an answer that is being taken.</summary>
    internal PlotPlan Plan => (taking > 0 ? Read() : settled ??= Read()).Plan!;

    internal string Text
    {
        get
        {
            var text = new StringBuilder();
            if (Next is not null)
            {
                text.Append("// Not all was asked yet: 'start' with this file goes on at: ").Append(Next).Append('\n');
            }

            foreach (var (id, answer) in held)
            {
                text.Append("// Answered and not used yet, ").Append(id).Append(": ").Append(answer).Append('\n');
            }

            return text.Append(InOrder().ToJsonString(Layout)).Append('\n').ToString();
        }
    }

    internal bool IsMeasured => Words("plot.name")?.EndsWith(NotMeasured, StringComparison.Ordinal) != true;

    /// <summary>A plan of which nothing is known but that it is one.</summary>
    internal static PlanDraft Empty() =>
        new(
            new()
            {
                ["planVersion"] = 1,
                ["plot"] = new JsonObject
                {
                    ["name"] = Unnamed,
                    ["area"] = "1 ac",
                    ["use"] = "browsed",
                },
            },
            _ => null
        );

    /// <summary>A plan file that was begun, by questions or by hand.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="open">Opens files that the plan names.</param>
    /// <param name="problems">What is wrong with it; empty where it can be gone on with.</param>
    internal static PlanDraft? Begun(string text, Func<string, string?> open, out IEnumerable<string> problems)
    {
        problems = PlanFile.Read(text, open).Problems.Select(p => p.ToString());
        if (problems.Any())
        {
            return null;
        }

        var draft = new PlanDraft([], open);
        draft.GoBackTo(text);
        return draft;
    }

    /// <summary>Takes up a draft as it was written.</summary>
    internal void GoBackTo(string text)
    {
        root = (JsonObject)JsonNode.Parse(text.TrimStart('\uFEFF'), documentOptions: Relaxed)!;
        settled = null;
        Next = GoesOn().Match(text) is { Success: true } mark ? mark.Groups["id"].Value : null;
        held.Clear();
        foreach (Match waiting in Waits().Matches(text))
        {
            held[waiting.Groups["id"].Value] = waiting.Groups["answer"].Value.TrimEnd();
        }
    }

    /// <summary>Whether something stands at a place such as <c>plot.area</c>.</summary>
    internal bool Has(string place) => Find(place) is not null;

    internal JsonNode? Find(string place) =>
        place.Split('.').Aggregate((JsonNode?)root, (node, name) => (node as JsonObject)?[name]);

    internal string? Words(string place) => Find(place)?.GetValue<string>();

    internal IEnumerable<JsonObject> Items(string place) => (Find(place) as JsonArray)?.OfType<JsonObject>() ?? [];

    internal string? Held(string id) => held.GetValueOrDefault(id);

    internal void Hold(string id, string answer) => held[id] = answer;

    internal void Release(string id) => held.Remove(id);

    /// <summary>Writes an answer, or takes it back.</summary>
    /// <returns>Null where it was taken, else what is wrong with it.</returns>
    internal string? Try(Action<PlanDraft> answer)
    {
        var (before, waited) = ((JsonObject)root.DeepClone(), held.ToList());
        string? wrong;
        taking++;
        try
        {
            answer(this);
            wrong = Read().Problems.FirstOrDefault()?.Text;
        }
        catch (BadAnswerException unreadable)
        {
            wrong = unreadable.Message;
        }
        finally
        {
            taking--;
            settled = null;
        }

        if (wrong is not null)
        {
            root = before;
            held.Clear();
            waited.ForEach(h => held.Add(h.Key, h.Value));
        }

        return wrong is null
            ? null
            : NotForOwners().Replace(wrong, "").Replace("found the text ", "found ", StringComparison.Ordinal);
    }

    /// <summary>Puts a value at a place, making what lies above it.</summary>
    internal void Put(string place, JsonNode value)
    {
        string[] names = place.Split('.');
        Above(names)[names[^1]] = value;
    }

    internal void Remove(string place)
    {
        string[] names = place.Split('.');
        Above(names).Remove(names[^1]);
    }

    /// <summary>Adds an item to a list.</summary>
    internal void Add(string place, JsonNode item)
    {
        if (Find(place) is JsonArray list)
        {
            list.Add(item);
        }
        else
        {
            Put(place, new JsonArray(item));
        }
    }

    /// <summary>The parts of the plan in the order of its schema, not in that of the questions.</summary>
    private JsonObject InOrder()
    {
        var ordered = new JsonObject();
        foreach (string name in StartWords.PartsOfPlan.Where(root.ContainsKey))
        {
            ordered[name] = root[name]!.DeepClone();
        }

        return ordered;
    }

    private JsonObject Above(string[] names)
    {
        var node = root;
        foreach (string name in names[..^1])
        {
            if (node[name] is not JsonObject next)
            {
                next = [];
                node[name] = next;
            }

            node = next;
        }

        return node;
    }

    private PlanFiles.PlanReadResult Read() => PlanFile.Read(Text, open);

    /// <summary>What a message of the reader says to someone who types the file.</summary>
    [GeneratedRegex(@", in quotes| \(ISO 8601\)")]
    private static partial Regex NotForOwners();

    [GeneratedRegex(@"^// Not all was asked yet: .* goes on at: (?<id>[a-z-]+)\r?$", RegexOptions.Multiline)]
    private static partial Regex GoesOn();

    [GeneratedRegex(@"^// Answered and not used yet, (?<id>[a-z-]+): (?<answer>.*)$", RegexOptions.Multiline)]
    private static partial Regex Waits();
}
