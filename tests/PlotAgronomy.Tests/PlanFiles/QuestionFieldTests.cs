using System.Text.Json.Nodes;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.PlanFiles;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>Every question is answered by a field of the plan file, or stands in <c>questions-without-field.txt</c> with the
/// reason.</summary>
public class QuestionFieldTests
{
    private static readonly Dictionary<string, string> Without = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "House/questions-without-field.txt"))
        .Select(line => line.Split('|', StringSplitOptions.TrimEntries)).ToDictionary(cells => cells[0], cells => cells[1]);

    /// <summary>The demo plans, and one with a soil that is too sweet.</summary>
    private static IEnumerable<string> Demos =>
        ((string[])["fall-blend", "frost-seeding", "county-report", "printed-rate", "strip-reading"]).Select(name => EditedPlan.Of(name, _ => { }))
            .Append(EditedPlan.With("county-report", "soilReport.waterPh", "7.9"));

    /// <summary>Raised by no plan below.</summary>
    private static readonly string[] NotRaised = [LimingCodes.AskDepth, NutrientCodes.AskSystem, SeedCodes.AskRate];

    [Fact]
    public void Every_question_is_answered_by_a_field_or_has_its_reason()
    {
        Assert.Equal(
            string.Join('\n', QuestionCatalog.Codes.Order(StringComparer.Ordinal)),
            string.Join('\n', QuestionFields.Paths.Keys.Concat(Without.Keys).Order(StringComparer.Ordinal)));
        Assert.All(Without.Values, reason => Assert.NotEmpty(reason));
    }

    /// <summary>Followed through the published schema.</summary>
    [Fact]
    public void Every_path_is_that_of_a_field_in_the_schema()
    {
        var schema = JsonNode.Parse(File.ReadAllText(Repository.PathOf("docs/plan.schema.json")))!;
        Assert.All(QuestionFields.Paths.Values, path => Assert.NotNull(path.Split('.').Skip(1).Aggregate((JsonNode?)schema, (part, step) => Below(schema, part, step))));
    }

    /// <summary>Second way: a plausible answer is put into the plan by what the stakes rest on, and what that changes in the
    /// written plan is looked up.</summary>
    [Fact]
    public void What_an_answer_changes_in_a_plan_lies_in_its_field()
    {
        var looked = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var plan in Demos.SelectMany(WithOneFieldLeftOut).Concat(Edited))
        {
            foreach (var question in plan.Solve().Questions.Where(q => !looked.Contains(q.Code)))
            {
                foreach (var answered in WaysIntoPlan.Answered(plan, question).Take(2))
                {
                    looked.Add(question.Code);
                    string path = PlanFile.FieldFor(question)!;
                    Assert.All(Changed(plan, answered.Plan), leaf => Assert.True(leaf == path || leaf.StartsWith($"{path}.", StringComparison.Ordinal) || leaf.StartsWith($"{path}[*]", StringComparison.Ordinal), $"{question.Code}: {leaf} for {path}"));
                }
            }
        }

        Assert.Equal(NotRaised, WaysIntoPlan.Codes.Except(looked));
    }

    /// <summary>Plans that raise what no field left out of a demo raises.</summary>
    private static IEnumerable<PlotPlan> Edited =>
        from edit in new (string Demo, string Path, string Json)[]
        {
            ("printed-rate", "soilReport.recommendation.lime", """{ "rate": "1 to 2 ton/ac", "basis": "north-carolina-standard" }"""),
            ("printed-rate", "soilReport.recommendation.lime", """{ "rate": "2 ton/ac", "basis": "north-carolina-standard", "targetPh": 6.5 }"""),
            ("printed-rate", "materials.lime.0", """{ "name": "lime", "form": "pelletized", "labelFigures": [{ "index": "iowa-ecce", "value": 60 }], "package": "40 lb", "price": 5 }"""),
            ("fall-blend", "materials.seedLots.0", """{ "kind": "spring oats", "untagged": true, "package": "50 lb", "price": 19 }"""),
            ("county-report", "method", "\"broadcast-then-rolled\""),
        }
        select PlanFile.Read(EditedPlan.With(edit.Demo, edit.Path, edit.Json)).Plan;

    private static IEnumerable<PlotPlan> WithOneFieldLeftOut(string text) =>
        Leaves(JsonNode.Parse(text)!, "$").Select(l => LeftOut(JsonNode.Parse(text)!, l.Node.GetPath()))
            .Select(left => PlanFile.Read(left.ToJsonString()).Plan).OfType<PlotPlan>();

    private static JsonNode LeftOut(JsonNode plan, string path)
    {
        var leaf = Leaves(plan, "$").First(l => l.Node.GetPath() == path).Node;
        (leaf.Parent as JsonObject)?.Remove(leaf.GetPropertyName());
        return plan;
    }

    /// <summary>A lot is changed where it is sown: the shelf would have it twice, and its mark is then named. A buffer that is read
    /// stands beside one that was.</summary>
    private static IEnumerable<string> Changed(PlotPlan before, PlotPlan after)
    {
        var (was, now) = (Written(before with { SeedOffers = [] }), Written(after with { SeedOffers = [] }));
        return was.Except(now).Concat(now.Except(was)).Select(l => l.Path).Where(p => p != "$.growing.kinds[*].lot").Select(p => p.Replace("secondBuffer", "buffer", StringComparison.Ordinal)).Distinct();
    }

    private static List<(string Path, string Value)> Written(PlotPlan plan) =>
        [.. Leaves(JsonNode.Parse(PlanFile.Write(plan))!, "$").Select(l => (l.Path, $"{l.Node.GetPath()} {l.Node.ToJsonString()}"))];

    /// <summary>Every value with its path, in which the items of a list are alike.</summary>
    private static IEnumerable<(string Path, JsonNode Node)> Leaves(JsonNode node, string path) =>
        node switch
        {
            JsonObject part => part.SelectMany(m => Leaves(m.Value!, $"{path}.{m.Key}")),
            JsonArray list => list.SelectMany(item => Leaves(item!, $"{path}[*]")),
            _ => [(path, node)],
        };

    private static JsonNode? Below(JsonNode schema, JsonNode? part, string step)
    {
        var field = Stated(part?["properties"]?[step.Replace("[*]", "", StringComparison.Ordinal)]);
        var held = step.EndsWith("[*]", StringComparison.Ordinal) ? Stated(field?["items"]) : field;
        return held?["$ref"] is { } there ? schema["$defs"]![there.GetValue<string>()["#/$defs/".Length..]] : held;
    }

    /// <summary>Without the words for what is not stated.</summary>
    private static JsonNode? Stated(JsonNode? field) => field?["anyOf"]?[0] ?? field;
}
