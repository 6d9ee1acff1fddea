using System.Text.Json.Nodes;
using PlotAgronomy.DrawnPlans;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Planning;

/// <summary>The order in which a person writes down readings, kinds, lots, offers and runs changes no answer.</summary>
public class OrderTests
{
    private static readonly string[] Lists = ["soilReport.readings", "growing.kinds", "materials.lime", "materials.fertilizers", "materials.seedLots", "materials.storeBlends"];

    /// <summary>The same draws every time; more of them by the variable <c>SHUFFLED_PLANS</c>.</summary>
    [Fact]
    public void Shuffled_lists_give_the_same_numbers_and_the_same_findings()
    {
        int draws = int.Parse(Environment.GetEnvironmentVariable("SHUFFLED_PLANS") ?? "80", System.Globalization.CultureInfo.InvariantCulture);
        string[] told = [.. Enumerable.Range(0, draws).Select(Difference).OfType<string>()];
        Assert.True(told.Length == 0, string.Join('\n', told));
    }

    /// <summary>What a shuffled plan says otherwise; null where it says the same, or the draw is no plan.</summary>
    private static string? Difference(int seed)
    {
        var random = new Random(seed);
        var plan = JsonNode.Parse(PlanDraw.Of(seed & int.MaxValue, 0).ToJsonString())!;
        if (PlanFile.Read(plan.ToJsonString()).Plan is not { } straight)
        {
            return null;
        }

        foreach (string path in Lists)
        {
            if (ListAt(plan, path) is { } list)
            {
                JsonNode?[] items = [.. list.Select(i => i?.DeepClone())];
                random.Shuffle(items);
                list.Clear();
                Array.ForEach(items, list.Add);
            }
        }

        var shuffled = PlanFile.Read(plan.ToJsonString()).Plan;
        Assert.NotNull(shuffled);
        var (before, after) = (Told(straight), Told(shuffled));
        return before.SequenceEqual(after) ? null : $"draw {seed}: {Between(before, after)}";
    }

    [Theory]
    [InlineData("fall-blend"), InlineData("clover-lots"), InlineData("frost-seeding"), InlineData("store-blend")]
    public void A_demo_plan_written_backwards_gives_the_same(string demo)
    {
        string text = EditedPlan.Of(demo, plan =>
        {
            foreach (string path in Lists)
            {
                if (ListAt(plan, path) is { } list)
                {
                    JsonNode?[] items = [.. list.Select(i => i?.DeepClone()).Reverse()];
                    list.Clear();
                    Array.ForEach(items, list.Add);
                }
            }
        });
        AssertSame(Told(PlanFile.Read(EditedPlan.Of(demo, _ => { })).Plan!), Told(PlanFile.Read(text).Plan!));
    }

    private static void AssertSame(List<string> straight, List<string> shuffled) =>
        Assert.True(straight.SequenceEqual(shuffled), Between(straight, shuffled));

    private static string Between(List<string> straight, List<string> shuffled) =>
        $"gone:\n{string.Join('\n', straight.Except(shuffled))}\nnew:\n{string.Join('\n', shuffled.Except(straight))}";

    private static JsonArray? ListAt(JsonNode plan, string path)
    {
        JsonNode? at = plan;
        foreach (string step in path.Split('.'))
        {
            at = (at as JsonObject)?[step];
        }

        return at as JsonArray;
    }

    /// <summary>Lines of the sheet in the order of the alphabet: every number, finding and question once, wherever it stands. A line
    /// that lists several kinds lists them in another order, so its words are sorted too.</summary>
    private static List<string> Told(PlotPlan plan)
    {
        var answers = plan.Solve();
        IEnumerable<string> told =
        [
            .. answers.Findings.Select(f => Sorted(f.ToString())),
            .. answers.Questions.Select(q => Sorted(q.ToString())),
            .. FieldSheet.Of(answers).Figures.Select(f => Sorted(f.ToString())),
            $"total {answers.TotalCost}",
        ];
        return [.. told.Distinct().Order(StringComparer.Ordinal)];
    }

    private static string Sorted(string text) =>
        string.Join(' ', text.Split([' ', ',', ';', ':', '.', '(', ')', '?'], StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal));
}
