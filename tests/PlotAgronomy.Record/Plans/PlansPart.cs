using System.Globalization;
using System.Text.Json.Nodes;

namespace PlotAgronomy.Record.Plans;

/// <summary>The answers to drawn plans, and to the demo plans.</summary>
/// <param name="written">Whether each plan is written and read again first.</param>
internal sealed class PlansPart(bool written) : ICheckedPart
{
    private const int Count = 3000;
    private const int LayoutEvery = 10;

    private readonly Lazy<DrawnPlan[]> drawn = new(() => [.. Enumerable.Range(1, Count).Select(DrawnPlan.Accepted)]);

    public string Name => "plans";

    public void Record(Recorder recorder)
    {
        var recorders = new Recorder[Count];
        var plans = drawn.Value;
        Parallel.For(0, Count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i =>
        {
            recorders[i] = new Recorder();
            string name = string.Create(CultureInfo.InvariantCulture, $"plan {i + 1:0000}");
            Record(recorders[i], name, plans[i].Json, plans[i].Plan, withLayout: i % LayoutEvery == 0);
        });
        foreach (var each in recorders)
        {
            recorder.Append(each);
        }

        string shares = $"{Share(recorder, "lime.need")} with an answer on lime, "
            + $"{Share(recorder, "need.P2O5", "need.K2O")} with one on phosphate or potash";
        string demos = Path.Combine(AppContext.BaseDirectory, "data");
        foreach (string path in Directory.EnumerateFiles(demos, "*.json").Order(StringComparer.Ordinal))
        {
            string json = File.ReadAllText(path).ReplaceLineEndings("\n");
            var plan = PlanFile.Read(json).Plan ?? throw new InvalidDataException($"'{path}' is no plan.");
            Record(recorder, $"demo {Path.GetFileNameWithoutExtension(path)}", json, plan, withLayout: true);
        }

        Console.Out.WriteLine($"{Name}: {Count} drawn plans, {plans.Sum(p => p.Refused)} draws refused; {shares}");
    }

    /// <summary>
    /// Every field of the schema must stand in a plan and be left out of another,
    /// and every word and every kind that can be sown must be used.
    /// </summary>
    public void Check(string folder)
    {
        string schema = Path.Combine(folder, "..", "..", "docs", "plan.schema.json");
        var use = new SchemaUse(JsonNode.Parse(File.ReadAllText(schema))!.AsObject());
        var kinds = new HashSet<string>(StringComparer.Ordinal);
        foreach (var each in drawn.Value)
        {
            use.Count(JsonNode.Parse(each.Json)!);
            kinds.UnionWith(each.Plan.Kinds.Select(k => k.Kind.Id));
        }

        var unsown = KindCatalog.Standard.Kinds.Where(k => k.SeedCount is not null && !kinds.Contains(k.Id));
        var missing = use.Missing().Concat(unsown.Select(k => $"kind {k.Id}")).ToList();
        if (missing.Count > 0)
        {
            throw new InvalidDataException($"The drawn plans leave out:\n{string.Join('\n', missing)}");
        }
    }

    private void Record(Recorder to, string @case, string json, PlotPlan plan, bool withLayout)
    {
        plan = written ? PlanFile.Read(PlanFile.Write(plan)).Plan! : plan;
        to.Add(@case, RecordCommand.InputDigest, PlanSheets.Digest(json));
        PlanAnswers.Record(to, @case, plan.Solve());
        PlanSheets.Record(to, @case, plan, withLayout);
    }

    private static string Share(Recorder recorder, params string[] meanings)
    {
        int answered = recorder.Rows.Where(r => meanings.Contains(r.Meaning) && r.Value != RecordedWord.None)
            .Select(r => r.Case).Distinct().Count();
        return (100.0 * answered / Count).ToString("0.0' %'", CultureInfo.InvariantCulture);
    }
}
