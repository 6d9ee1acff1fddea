using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using PlotAgronomy.DrawnPlans;
using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>Plans drawn from the schema and spoilt: whatever reading accepts is solved, compared and written, and no sheet shows
/// what is no amount.</summary>
/// <remarks>Some hundred in the gate; <c>GENERATED_PLANS=15000</c> draws as many, <c>GENERATED_PLANS_FROM</c> starts elsewhere.</remarks>
public partial class GeneratedPlanTests
{
    private const int Parts = 10;

    private static readonly string[] Demos = ["fall-blend", "frost-seeding", "clover-lots", "store-blend"];

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Parts)];

    private static int Count => Variable("GENERATED_PLANS") ?? 300;

    [Theory, MemberData(nameof(Numbers))]
    public void Whatever_is_accepted_is_solved_compared_and_written(int part)
    {
        int from = Variable("GENERATED_PLANS_FROM") ?? 0, each = Count / Parts;
        var failures = new List<string>();
        int accepted = 0;
        for (int number = from + (part * each); number < from + ((part + 1) * each); number++)
        {
            string text = PlanOf(number);
            try
            {
                accepted += Answers(text, number) ? 1 : 0;
            }
            catch (Exception thrown) when (thrown is not Xunit.Sdk.XunitException)
            {
                failures.Add($"{number}: {thrown.GetType().Name}: {thrown.Message} {thrown.StackTrace?.Split('\n').Where(l => l.Contains("at PlotAgronomy", StringComparison.Ordinal) && !l.Contains("Guard", StringComparison.Ordinal)).Take(5).Aggregate("", (a, l) => a + l.Split(" in /")[0])}");
            }
            catch (Xunit.Sdk.XunitException shown)
            {
                failures.Add($"{number}: {shown.Message}");
            }
        }

        Assert.True(failures.Count == 0, string.Join("\n", failures));
        // Spoilt plans are mostly refused, but not all of them: else nothing was tried.
        Assert.InRange(accepted, each / 10, each);
    }

    private static bool Answers(string text, int number)
    {
        var reading = PlanFile.Read(text);
        if (reading.Plan is not { } plan)
        {
            Assert.NotEmpty(reading.Problems);
            Assert.All(reading.Problems, p => Assert.DoesNotMatch(NoWord(), p.ToString()));
            return false;
        }

        // A plan may call a laboratory or a lot "-0"; then it is no amount.
        var noAmount = text.Contains("\"-0\"", StringComparison.Ordinal) ? NoAmountButZero() : NoAmount();
        void AssertPlain(string shown) => AssertSound(shown, noAmount);
        var answers = plan.Solve();
        int width = new[] { 60, 100, 200 }[number % 3];
        AssertPlain(FieldSheet.Of(answers).ToText(width, showWork: true));
        AssertPlain(FieldSheet.Of(answers).ToMarkdown(showWork: true));
        Assert.NotNull(JsonNode.Parse(FieldSheet.Of(answers).ToJson(showWork: true)));
        AssertPlain(string.Join("\n", answers.Findings.Select(f => f.ToString()).Concat(answers.Questions.Select(q => q.ToString()))));
        AssertPlain(FieldSheet.Of(plan.CompareSystems()).ToText(width));
        AssertPlain(FieldSheet.Of(plan.CompareLime()).ToText(width));
        if (!plan.StoreBlends.IsEmpty)
        {
            AssertPlain(FieldSheet.Of(plan.CompareStoreBlends()).ToText(width));
        }

        if (!plan.KindsInSeveralLots.IsEmpty)
        {
            AssertPlain(FieldSheet.Of(plan.CompareSeedLots()).ToText(width));
        }

        foreach (var pass in answers.Spreading.TryGet(out var spreading) ? spreading.Passes : [])
        {
            Assert.DoesNotContain("NaN", pass.Laid.TryGet(out var laid) ? laid.ToSvg() : "", StringComparison.Ordinal);
        }

        string written = PlanFile.Write(plan);
        Assert.Empty(PlanFile.Read(written).Problems);
        return true;
    }

    private static void AssertSound(string shown, Regex noAmount)
    {
        Assert.DoesNotMatch(noAmount, shown);
        foreach (Match range in Range().Matches(shown))
        {
            double low = Number(range.Groups[1].Value), high = Number(range.Groups[2].Value);
            Assert.True(low <= high, $"upside down: {range.Value} in {Around(shown, range.Index)}");
        }
    }

    private static double Number(string text) => double.Parse(text.Replace(",", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);

    private static string Around(string text, int place) => text[Math.Max(0, place - 60)..Math.Min(text.Length, place + 60)].ReplaceLineEndings(" ");

    private static string PlanOf(int number)
    {
        var random = new Random(number);
        JsonNode plan = number % 3 == 0 ? JsonNode.Parse(File.ReadAllText(Repository.PathOf($"samples/data/{Demos[random.Next(Demos.Length)]}.json")))! : PlanDraw.Of(number, 0);
        if (plan is JsonObject whole)
        {
            whole.Remove("$schema");
        }

        int spoilt = random.Next(0, 4);
        for (int i = 0; i < spoilt; i++)
        {
            PlanSpoiling.Spoil(plan, random);
        }

        return plan.ToJsonString(new() { WriteIndented = number % 2 == 0 });
    }

    private static int? Variable(string name) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out int count) ? count : null;

    [GeneratedRegex(@"NaN|∞|Infinity|PlotAgronomy\.[A-Z]|System\.[A-Z]|UnitsNet|\{[a-z ]+\}|[0-9]E[+-]?[0-9]")]
    private static partial Regex NoAmountButZero();

    [GeneratedRegex(@"NaN|∞|Infinity|PlotAgronomy\.[A-Z]|System\.[A-Z]|UnitsNet|\{[a-z ]+\}|[0-9]E[+-]?[0-9]|(?<![0-9A-Za-z.)-])-0(?![.0-9])")]
    private static partial Regex NoAmount();

    [GeneratedRegex(@"PlotAgronomy\.|System\.|UnitsNet|Exception|\(Parameter")]
    private static partial Regex NoWord();

    [GeneratedRegex(@"(?<![0-9:.,/-])([0-9][0-9,]*(?:\.[0-9]+)?) to ([0-9][0-9,]*(?:\.[0-9]+)?)(?= (?:%|lb|ton|ft|in(?!\s+size)|pH|ac|seeds|lb/ac|ton/ac|ppm)\b)")]
    private static partial Regex Range();
}
