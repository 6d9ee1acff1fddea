using PlotAgronomy.Tests.Fuzz;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>Every number of a plan in turn with endless digits: a plan, or problems that name their field; never an
/// exception.</summary>
public class EndlessDigitsTests
{
    private const string Paced = """
        "pace": "100 ft in 40, 41 and 39 double paces",
          "planVersion"
        """;

    [Theory]
    [InlineData("samples/data/fall-blend.json")]
    [InlineData("samples/data/frost-seeding.json")]
    [InlineData("samples/data/county-report.json")]
    [InlineData("samples/data/clover-lots.json")]
    [InlineData("samples/data/store-blend.json")]
    [InlineData("samples/data/printed-rate.json")]
    [InlineData("samples/data/paced-corner.json")]
    [InlineData("tests/PlotAgronomy.Tests/Plans/p01-sand-nc.json")]
    [InlineData("tests/PlotAgronomy.Tests/Plans/p09-grains-clover-sc.json")]
    public void Any_number_of_a_plan_may_be_endless(string plan)
    {
        string text = File.ReadAllText(Repository.PathOf(plan));
        text = text.Contains("\"pace\"", StringComparison.Ordinal) ? text : text.Replace("\"planVersion\"", Paced, StringComparison.Ordinal);
        Assert.Empty(PlanFile.Read(text, _ => null).Problems.Where(p => p.Path.EndsWith("pace", StringComparison.Ordinal)));
        foreach (string spoilt in TextSpoiling.WithEndlessDigits(text))
        {
            var read = PlanFile.Read(spoilt, _ => null);
            Assert.All(read.Problems, p => Assert.NotEmpty(p.Path));
            Assert.True(read.Plan is not null || !read.Problems.IsEmpty, spoilt);
        }
    }
}
