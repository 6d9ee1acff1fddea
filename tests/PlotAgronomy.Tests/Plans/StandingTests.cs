using System.Text;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Plans;

/// <summary>How well the figures are known that move what a sheet prints: counted by status over whole plans.</summary>
public class StandingTests(ITestOutputHelper output)
{
    private static readonly string[] Demos = ["clover-lots", "fall-blend", "frost-seeding"];

    private static readonly string[] Plots =
        ["p01-sand-nc", "p03-clay-smp59-oh", "p05-tiny-vt", "p07-clover-upkeep-mi", "p09-grains-clover-sc", "p11-frost-clover-mo", "p13-chicory-clover-mn"];

    private static PlotAnswers? Solve(string name)
    {
        string path = Demos.Contains(name) ? $"samples/data/{name}.json" : $"tests/PlotAgronomy.Tests/Plans/{name}.json";
        return PlanFile.Read(File.ReadAllText(Repository.PathOf(path))).Plan?.Solve();
    }

    /// <summary>Each place in a publication once: those behind the figures of the sheet, and the dates of the kinds.</summary>
    private static Dictionary<DataStatus, int> Count(PlotAnswers answers)
    {
        var figures = FieldSheet.Of(answers).Figures;
        var origins = figures
            .SelectMany(f => f.ShowWork().Concat(f.RestsOn.SelectMany(r => r.ShowWork())))
            .Select(l => l.Origin)
            .Concat(Kinds(answers))
            .OfType<Origin>()
            .Where(o => !o.IsUsersOwn)
            .Select(o => (o.ToString(), o.Locator, o.Status))
            .Distinct();
        return origins.GroupBy(o => o.Status).ToDictionary(g => g.Key, g => g.Count());
    }

    private static IEnumerable<Origin?> Kinds(PlotAnswers answers) =>
        answers.Plan.Kinds.SelectMany(k => new[]
        {
            k.Kind.Rates?.EvidenceFor(answers.Plan.SowingMethod!.Value), k.Kind.SeedCount?.Evidence, k.Kind.Depth?.Evidence, k.Kind.Ph?.Evidence,
            k.Kind.Ph?.BestEvidence, k.Kind.Drainage?.Evidence, k.Kind.Hardiness?.Evidence, k.Kind.Nitrogen?.Evidence, k.Kind.Seasons?.Evidence,
        });

    [Fact, Trait("Category", "Slow")]
    public void Figures_by_status_are_counted_over_the_plans()
    {
        var all = new Dictionary<DataStatus, int>();
        foreach (string name in Demos.Concat(Plots))
        {
            var counted = Solve(name) is { } answers ? Count(answers) : [];
            output.WriteLine($"{name}: {InWords(counted)}");
            foreach (var (status, number) in counted)
            {
                all[status] = all.GetValueOrDefault(status) + number;
            }
        }

        output.WriteLine($"all: {InWords(all)}");
        int seen = all.GetValueOrDefault(DataStatus.Read) + all.GetValueOrDefault(DataStatus.Secondary);
        Assert.True(all.GetValueOrDefault(DataStatus.Memory) * 4 < seen, "more than a fifth of the figures seen and remembered are from memory");
    }

    /// <summary>Figures from memory behind what the sheet prints, plan by plan: a published number that moved an amount, a verdict
    /// or a date. Counted are the sentences that say so, a kind or method each; the words of hazards and inoculant groups move
    /// none. More than five stand only where the plan names a method that was not seen in print.</summary>
    [Theory]
    [InlineData("fall-blend", 5)]
    [InlineData("clover-lots", 2)]
    [InlineData("frost-seeding", 2)]
    [InlineData("p01-sand-nc", 2)]
    [InlineData("p03-clay-smp59-oh", 2)]
    [InlineData("p05-tiny-vt", 3)]
    [InlineData("p07-clover-upkeep-mi", 2)]
    [InlineData("p09-grains-clover-sc", 3)]
    [InlineData("p11-frost-clover-mo", 4)]
    [InlineData("p13-chicory-clover-mn", 1)]
    public void No_plan_rests_on_more_than_a_few_figures_from_memory(string name, int expected)
    {
        var answers = Solve(name)!;
        string[] remembered = [.. Remembered(answers).Order(StringComparer.Ordinal)];
        Assert.True(remembered.Length == expected, $"{remembered.Length}: {string.Join("; ", remembered)}");
        bool namesUnchecked = answers.LimeMethod.Chosen?.Status == DataStatus.Memory || answers.NutrientSystem.Chosen?.Status == DataStatus.Memory;
        Assert.True(remembered.Length <= 5 || namesUnchecked);
    }

    /// <summary>What each sentence is about; one that names several kinds stands for each of them.</summary>
    private static IEnumerable<string> Remembered(PlotAnswers answers)
    {
        var behindFigures = FieldSheet.Of(answers).Figures.SelectMany(f => f.Results.Concat(f.RestsOn)).SelectMany(r => r.Findings);
        return behindFigures.Concat(answers.Findings)
            .Where(f => f.Code == ReferenceCodes.FromMemory)
            .Select(f => f.Values.Single(v => v.Name == "method").Text)
            .Where(w => !w.StartsWith("the hazards of", StringComparison.Ordinal) && !w.StartsWith("the inoculant group of", StringComparison.Ordinal))
            .SelectMany(PerKind)
            .Distinct();
    }

    private static IEnumerable<string> PerKind(string what)
    {
        int of = what.IndexOf(" of ", StringComparison.Ordinal);
        return of < 0 || what.StartsWith("the target pH", StringComparison.Ordinal) ? [what] : what[(of + 4)..].Split("; ").Select(kind => $"{what[..of]} of {kind}");
    }

    private static string InWords(Dictionary<DataStatus, int> counted) =>
        new StringBuilder().AppendJoin(", ", Enum.GetValues<DataStatus>().Select(s => $"{counted.GetValueOrDefault(s)} {DataStatuses.Words[s]}")).ToString();
}
