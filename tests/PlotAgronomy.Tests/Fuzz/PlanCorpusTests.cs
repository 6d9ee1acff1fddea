using System.Text;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Fuzz;

/// <summary>Plans that once went wrong, or are odd in a way of their own: each ends in mistakes with their place, or in a sheet in all
/// forms. What is said of each stands in <c>plans.approved.txt</c>; it is held as it stands, read by a person.</summary>
public class PlanCorpusTests
{
    private static readonly string Folder = Repository.PathOf("tests/PlotAgronomy.Tests/Fuzz/corpus");

    [Fact]
    public void Every_odd_plan_is_answered_or_refused_at_its_place()
    {
        var said = new StringBuilder();
        foreach (string file in Directory.GetFiles(Path.Combine(Folder, "plans")).Order(StringComparer.Ordinal))
        {
            said.Append(Path.GetFileName(file)).Append('\n');
            foreach (string line in Said(File.ReadAllText(file)))
            {
                said.Append("  ").Append(line).Append('\n');
            }
        }

        ApprovedText.AssertCurrent(Path.Combine(Folder, "plans.approved.txt"), said.ToString());
    }

    private static IEnumerable<string> Said(string text)
    {
        var reading = PlanFile.Read(text);
        if (reading.Plan is not { } plan)
        {
            return reading.Problems.Select(p => p.ToString());
        }

        var sheet = FieldSheet.Of(plan.Solve());
        Assert.All([sheet.ToText(100, showWork: true), sheet.ToMarkdown(), sheet.ToHtml(), sheet.ToJson()], form => Assert.NotEmpty(form));
        return ["read", .. sheet.ToText(120, showWork: false).Split('\n').SkipWhile(l => l.Length > 0).Skip(1).TakeWhile(l => l.Length > 0)];
    }
}
