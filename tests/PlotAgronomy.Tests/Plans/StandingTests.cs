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

    private static string InWords(Dictionary<DataStatus, int> counted) =>
        new StringBuilder().AppendJoin(", ", Enum.GetValues<DataStatus>().Select(s => $"{counted.GetValueOrDefault(s)} {DataStatuses.Words[s]}")).ToString();
}
