using System.Text.Json.Nodes;
using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Plans;

/// <summary>A whole plan of this folder with its answers and the words of its sheet.</summary>
internal sealed class SolvedPlan
{
    private SolvedPlan(PlotPlan plan)
    {
        Plan = plan;
        Answers = plan.Solve();
        Sheet = FieldSheet.Of(Answers);
        Text = Words(Sheet.ToText(showWork: true));
    }

    internal PlotPlan Plan { get; }

    internal PlotAnswers Answers { get; }

    internal FieldSheet Sheet { get; }

    /// <summary>The whole sheet in one line.</summary>
    internal string Text { get; }

    internal PlotVerdict Verdict => Answers.Verdict.Value;

    internal IEnumerable<string> Sown => Answers.Seed.State == AnswerState.NoneNeeded ? [] : Answers.Seed.Value.Kinds.Select(k => k.Planned.Kind.Id);

    /// <summary>What the shopping list buys.</summary>
    internal IEnumerable<string> Bought => Sheet.Figures.Where(f => f.Code.StartsWith("buy.", StringComparison.Ordinal) && f.Code != "buy.all").Select(f => f.Code);

    internal static SolvedPlan Of(string name, Action<JsonNode>? change = null) => new(Read(name, change));

    internal static SolvedPlan Of(PlotPlan plan) => new(plan);

    internal static PlotPlan Read(string name, Action<JsonNode>? change = null)
    {
        var json = JsonNode.Parse(File.ReadAllText(Repository.PathOf($"tests/PlotAgronomy.Tests/Plans/{name}.json")))!;
        change?.Invoke(json);
        var reading = PlanFile.Read(json.ToJsonString(new() { WriteIndented = true }));
        Assert.Empty(reading.Problems);
        return reading.Plan!;
    }

    internal KindVerdict On(string kind) => Verdict.Kinds.Single(v => v.Planned.Kind.Id == kind);

    internal bool Has(string code) => Answers.Findings.Any(f => f.Code == code);

    /// <summary>The steps before and after the seed in one line.</summary>
    internal string Work => string.Join(' ', Sheet.Sections.Where(s => s.Id is "do" or "after").Select(s => Section(s.Id)));

    /// <summary>The blocks of one section in one line.</summary>
    internal string Section(string id)
    {
        int at = Sheet.Sections.ToList().FindIndex(s => s.Id == id);
        Assert.True(at >= 0, $"no section {id}");
        string from = Sheet.ToText(showWork: true);
        int start = from.IndexOf($"\n{Sheet.Sections[at].Heading} \u2500", StringComparison.Ordinal) + 1;
        int end = at + 1 < Sheet.Sections.Length ? from.IndexOf($"\n{Sheet.Sections[at + 1].Heading} \u2500", start, StringComparison.Ordinal) : from.Length;
        return Words(from[start..end]);
    }

    internal void Says(params IEnumerable<string> words) => Assert.All(words, w => Assert.Contains(w, Text, StringComparison.OrdinalIgnoreCase));

    internal void SaysNothingOf(params IEnumerable<string> words) => Assert.All(words, w => Assert.DoesNotContain(w, Text, StringComparison.OrdinalIgnoreCase));

    private static string Words(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
