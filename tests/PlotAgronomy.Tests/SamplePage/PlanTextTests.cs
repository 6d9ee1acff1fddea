using System.Text.Json;
using System.Text.Json.Nodes;
using PlotAgronomy.OfflinePage.Plan;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.SamplePage;

/// <summary>A value of a plan's text is changed, added or taken out, and nothing else: held against the framework's own JSON
/// document, on which the same is done.</summary>
public class PlanTextTests
{
    private static readonly JsonDocumentOptions Lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    public static TheoryData<string> Plans => ["fall-blend", "frost-seeding", "county-report", "paced-corner", "printed-rate", "store-blend", "strip-reading"];

    [Theory, MemberData(nameof(Plans))]
    public void Every_value_is_changed_alone(string plan) =>
        Assert.All(LeavesOf(plan), leaf =>
        {
            var text = new PlanText(TextOf(plan));
            var expected = Parsed(text.ToString());
            Put(expected, leaf, JsonValue.Create("else"));
            string changed = text.With(leaf, "\"else\"");
            Assert.True(JsonNode.DeepEquals(expected, Parsed(changed)), leaf.ToString());
            var there = text.Find(leaf)!;
            Assert.Equal(text.ToString().Length - (there.End - there.Start) + 6, changed.Length);
        });

    [Theory, MemberData(nameof(Plans))]
    public void Every_value_is_taken_out_with_what_is_left_empty(string plan) =>
        Assert.All(LeavesOf(plan), leaf =>
        {
            var text = new PlanText(TextOf(plan));
            var expected = Parsed(text.ToString());
            TakeOut(expected, leaf);
            string changed = text.With(leaf, null);
            Assert.True(JsonNode.DeepEquals(expected, Parsed(changed)), $"{leaf}\n{changed}");
        });

    /// <summary>A plan is built anew, value by value in the order of the file, from one that holds nothing.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void A_plan_is_typed_from_nothing(string plan)
    {
        string built = "{}";
        foreach (var leaf in LeavesOf(plan))
        {
            built = new PlanText(built).With(leaf, At(Parsed(TextOf(plan)), leaf)!.ToJsonString());
        }

        Assert.True(JsonNode.DeepEquals(Parsed(TextOf(plan)), Parsed(built)), built);
        Assert.All(built.Split('\n'), line => Assert.Equal(line.TrimEnd(), line));
    }

    [Theory]
    [InlineData("{\n  \"a\": 1 // one\n}", "$.b", "2", "{\n  \"a\": 1, // one\n  \"b\": 2\n}")]
    [InlineData("{\n  \"a\": 1, // one\n}", "$.b", "2", "{\n  \"a\": 1, // one\n  \"b\": 2\n}")]
    [InlineData("{ \"a\": 1 }", "$.b", "2", "{ \"a\": 1, \"b\": 2 }")]
    [InlineData("{ \"a\": 1, /* both */ \"b\": 2 }", "$.b", null, "{ \"a\": 1 /* both */ }")]
    [InlineData("{\n  \"a\": 1, // one\n  \"b\": 2 // two\n}", "$.b", null, "{\n  \"a\": 1 // one\n}")]
    [InlineData("{\n  \"a\": 1, // one\n  \"b\": 2\n}", "$.a", null, "{\n  \"b\": 2\n}")]
    [InlineData("{\n  \"a\": \"not stated\"\n}", "$.a.b", "2", "{\n  \"a\": {\n    \"b\": 2\n  }\n}")]
    [InlineData("{\n  \"a\": {\n    \"b\": \"not stated\"\n  }\n}", "$.a.b.c", "2", "{\n  \"a\": {\n    \"b\": { \"c\": 2 }\n  }\n}")]
    [InlineData("{\n  \"a\": {\n    \"b\": 1\n  },\n  \"c\": 3\n}", "$.a.b", null, "{\n  \"c\": 3\n}")]
    [InlineData("{\n  \"a\": [1, 2]\n}", "$.a[2]", "3", "{\n  \"a\": [1, 2, 3]\n}")]
    [InlineData("{\n  \"a\": [1, 2]\n}", "$.a[0]", null, "{\n  \"a\": [2]\n}")]
    [InlineData("{ \"ä\": 1 }", "$.ä", "2", "{ \"ä\": 2 }")]
    public void What_stands_around_stays(string text, string path, string? json, string expected) =>
        Assert.Equal(expected, new PlanText(text).With(PlanPath.Of(path), json));

    [Theory, InlineData(""), InlineData("[1]"), InlineData("{ \"a\": "), InlineData("\"\\ud800\"")]
    public void A_text_without_a_plan_is_left_as_it_is(string text) =>
        Assert.Equal(text, new PlanText(text).With(PlanPath.Of("$.a"), "1"));

    [Theory, InlineData("$"), InlineData("$.plot.name"), InlineData("$.a[0].b[12]"), InlineData("$.x]")]
    public void A_path_is_read_as_it_is_written(string path) => Assert.Equal(path, PlanPath.Of(path).ToString());

    private static string TextOf(string plan) => File.ReadAllText(Repository.PathOf($"samples/data/{plan}.json"));

    private static JsonNode Parsed(string text) => JsonNode.Parse(text, documentOptions: Lenient)!;

    private static List<PlanPath> LeavesOf(string plan) => [.. Leaves(Parsed(TextOf(plan)), PlanPath.Root)];

    private static IEnumerable<PlanPath> Leaves(JsonNode? node, PlanPath at) => node switch
    {
        JsonObject part => part.SelectMany(m => Leaves(m.Value, at.Member(m.Key))),
        JsonArray list => list.SelectMany((item, i) => Leaves(item, at.Item(i))),
        _ => [at],
    };

    private static JsonNode? At(JsonNode node, PlanPath path) =>
        path.Steps.Aggregate<PlanStep, JsonNode?>(node, (at, step) => step.Index is { } index ? at![index] : at![step.Name]);

    private static void Put(JsonNode root, PlanPath path, JsonNode value)
    {
        var around = At(root, path.Up)!;
        if (path.Last.Index is { } index)
        {
            around[index] = value;
        }
        else
        {
            around[path.Last.Name] = value;
        }
    }

    private static void TakeOut(JsonNode root, PlanPath path)
    {
        var around = At(root, path.Up)!;
        if (around is JsonArray list)
        {
            list.RemoveAt(path.Last.Index!.Value);
        }
        else
        {
            around.AsObject().Remove(path.Last.Name);
        }

        bool isEmpty = around is JsonArray { Count: 0 } or JsonObject { Count: 0 };
        if (isEmpty && path.Steps.Length > 1)
        {
            TakeOut(root, path.Up);
        }
    }
}
