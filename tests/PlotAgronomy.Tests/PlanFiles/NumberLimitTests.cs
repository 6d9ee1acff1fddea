using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Nodes;
using PlotAgronomy.DrawnPlans;
using PlotAgronomy.PlanFiles;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>Every number that the schema gives limits for, in a drawn plan that has it: taken at both limits, and refused with field
/// and limits just below and just above. The limits themselves are practice.</summary>
public class NumberLimitTests
{
    private const int MostPlans = 3000;

    private const double Hair = 0.001;

    private static readonly JsonObject Schema =
        JsonNode.Parse(File.ReadAllText(Repository.PathOf("docs/plan.schema.json")))!.AsObject();

    private static readonly Lazy<Dictionary<string, (JsonObject Plan, JsonObject Limits)>> Found = new(Find);

    public static TheoryData<string> Fields => [.. Found.Value.Keys.Order(StringComparer.Ordinal)];

    [Fact]
    public void Drawn_plans_reach_every_limited_number_of_the_schema()
    {
        int limited = Everywhere(Schema).Count(part => part["minimum"] is not null);
        Assert.Equal(limited, Found.Value.Count);
    }

    [Theory, MemberData(nameof(Fields))]
    public void A_number_is_taken_at_its_limits_and_refused_beyond(string path)
    {
        var (plan, limits) = Found.Value[path];
        var (least, most) = ((double)limits["minimum"]!, (double)limits["maximum"]!);
        string expected = string.Create(CultureInfo.InvariantCulture, $"number from {least} to {most}");
        foreach (double inside in new[] { least, most })
        {
            Assert.DoesNotContain(Problems(plan, path, inside), p => p.Text.Contains(expected, StringComparison.Ordinal));
        }

        foreach (double beyond in new[] { least - Hair, most + Hair })
        {
            Assert.Contains(Problems(plan, path, beyond), p => p.Path == path && p.Text.Contains(expected, StringComparison.Ordinal));
        }
    }

    private static ImmutableArray<PlanProblem> Problems(JsonObject plan, string path, double value)
    {
        var changed = plan.DeepClone();
        EditedPlan.Set(changed, path["$.".Length..].Replace('[', '.').Replace("]", "", StringComparison.Ordinal), value);
        return PlanFile.Read(changed.ToJsonString()).Problems;
    }

    private static Dictionary<string, (JsonObject, JsonObject)> Find()
    {
        var found = new Dictionary<string, (JsonObject, JsonObject)>();
        var seen = new HashSet<JsonObject>();
        for (int number = 1; number <= MostPlans; number++)
        {
            var plan = PlanDraw.Of(number, 0);
            foreach (var (path, limits) in Limited(Schema, plan, "$"))
            {
                if (seen.Add(limits))
                {
                    found[path] = (plan, limits);
                }
            }
        }

        return found;
    }

    /// <summary>The numbers of a plan with what the schema says of them.</summary>
    private static IEnumerable<(string Path, JsonObject Limits)> Limited(JsonObject part, JsonNode? value, string path)
    {
        part = part["$ref"] is { } reference ? Schema["$defs"]![((string)reference!).Split('/')[^1]]!.AsObject() : part;
        if (part["anyOf"] is JsonArray choices)
        {
            return choices.SelectMany(c => Limited(c!.AsObject(), value, path));
        }

        if (part["minimum"] is not null && value is JsonValue)
        {
            return [(path, part)];
        }

        if (value is JsonArray list && part["items"] is JsonObject item)
        {
            return list.SelectMany((v, i) => Limited(item, v, string.Create(CultureInfo.InvariantCulture, $"{path}[{i}]")));
        }

        return value is JsonObject row && part["properties"] is JsonObject fields
            ? row.Where(f => fields.ContainsKey(f.Key)).SelectMany(f => Limited(fields[f.Key]!.AsObject(), f.Value, $"{path}.{f.Key}"))
            : [];
    }

    private static IEnumerable<JsonObject> Everywhere(JsonNode? node) => node switch
    {
        JsonObject part => part.SelectMany(f => Everywhere(f.Value)).Prepend(part),
        JsonArray list => list.SelectMany(Everywhere),
        _ => [],
    };
}
