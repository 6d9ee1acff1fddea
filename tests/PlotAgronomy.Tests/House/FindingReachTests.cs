using System.Reflection;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.House;

/// <summary>Every caution can be raised by a plan, or stands in <c>findings-from-code.txt</c> with who asks for it.</summary>
/// <remarks>A plan can raise what the code behind <c>plan.Solve().Findings</c> names, what a measured area brings along, and what
/// a table names that this code reads.
/// This may count a code as raised that no plan meets; <see cref="Planning.RaisedFindingsTests"/> holds the other side over whole
/// plans.</remarks>
public class FindingReachTests
{
    private static readonly Lazy<HashSet<string>> Raised = new(() =>
    {
        var reached = new ReachedCode(HouseAssembly.Library);
        reached.From([
            typeof(PlanSolver).GetMethod(nameof(PlanSolver.Solve))!,
            typeof(PlotAnswers).GetProperty(nameof(PlotAnswers.Findings))!.GetMethod!,
            .. typeof(PlotArea).GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly),
        ]);
        var texts = reached.Methods.SelectMany(IlReader.Texts).ToHashSet(StringComparer.Ordinal);
        var named = texts.Where(t => t.EndsWith(".csv", StringComparison.Ordinal)).SelectMany(Cells);
        return [.. texts.Concat(named).Intersect(FindingCatalog.Codes)];
    });

    private static Dictionary<string, string> FromCode => File.ReadLines(Path.Combine(AppContext.BaseDirectory, "House/findings-from-code.txt"))
        .Select(line => line.Split('|', StringSplitOptions.TrimEntries)).ToDictionary(cells => cells[0], cells => cells[1]);

    [Fact]
    public void Every_caution_has_a_way_to_the_answers_of_a_plan_or_its_reason()
    {
        string missing = string.Join('\n', FindingCatalog.Codes.Except(Raised.Value).Except(FromCode.Keys));
        Assert.True(missing.Length == 0, missing);
    }

    [Fact]
    public void The_list_holds_only_what_no_plan_raises()
    {
        string raised = string.Join('\n', FromCode.Keys.Where(code => Raised.Value.Contains(code) || !FindingCatalog.Codes.Contains(code)));
        Assert.True(raised.Length == 0, raised);
        Assert.All(FromCode.Values, reason => Assert.NotEmpty(reason));
    }

    private static IEnumerable<string> Cells(string path)
    {
        if (!CsvTable.EmbeddedNames.Contains(path) || path.EndsWith("/findings.csv", StringComparison.Ordinal))
        {
            return [];
        }

        var table = CsvTable.Embedded(path);
        return table.Rows.SelectMany(r => table.Header.Select(r.TextOrNull)).OfType<string>().SelectMany(c => c.Split(';'));
    }
}
