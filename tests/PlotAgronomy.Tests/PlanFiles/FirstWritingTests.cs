using PlotAgronomy.Planning;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>A plan as an owner first writes it who has read the page on the plan file and nothing else: paces, a report without its
/// small print, tags, two crimson clovers. What is wrong is told at once, each with what to write instead, and the second writing
/// is read.</summary>
/// <remarks>Expected: practice; the area is Heron's formula over the three triangles, by hand.</remarks>
public class FirstWritingTests
{
    private static readonly (string Written, string Instead)[] Mends =
    [
        ("\n    \"grewBefore\": \"nothing\",", ""),
        ("\"2/27\"", "\"Feb 2027\""),
        ("\"2 tons\"", "\"2 tons/acre\""),
        ("\"nitrogen\": \"60 lb\"", "\"nitrogen\": \"60 lb/acre\""),
        ("\"phosphate\": \"40 lb\"", "\"phosphate\": \"40 pounds per acre\""),
        ("\"potash\": \"80 lb\"", "\"potash\": \"80 lbs/ac\""),
        ("\"kind\": \"oats\"", "\"kind\": \"winter oats\""),
        ("[\"Oats\"", "[\"Winter oats\""),
        ("\"kind\": \"white clover\"", "\"kind\": \"white Dutch clover\""),
        ("\"kind\": \"radish\"", "\"kind\": \"daikon radish\""),
    ];

    private static string First => File.ReadAllText(Repository.PathOf("tests/PlotAgronomy.Tests/PlanFiles/first-writing.json")).ReplaceLineEndings("\n");

    private static string Second =>
        Mends.Aggregate(First, (plan, mend) =>
        {
            Assert.Contains(mend.Written, plan, StringComparison.Ordinal);
            return plan.Replace(mend.Written, mend.Instead, StringComparison.Ordinal);
        });

    [Theory]
    [InlineData("$.plot.grewBefore", "No kind is called 'nothing'")]
    [InlineData("$.soilReport.sampled", "or 'Sep 2026' for the month")]
    [InlineData("$.soilReport.recommendation.lime.rate", "'2 tons' lacks what it is counted by, such as '2 ton/ac'")]
    [InlineData("$.soilReport.recommendation.nitrogen", "'60 lb' lacks what it is counted by, such as '60 lb/ac'")]
    [InlineData("$.soilReport.recommendation.phosphate", "'40 lb' lacks what it is counted by, such as '40 lb/ac'")]
    [InlineData("$.soilReport.recommendation.potash", "'80 lb' lacks what it is counted by, such as '80 lb/ac'")]
    [InlineData("$.growing.kinds[1].kind", "Oats, winter type [oats-winter]. Name one of them.")]
    [InlineData("$.growing.kinds[3].kind", "White Dutch clover (intermediate white clover) [white-dutch-clover]. Name one of them.")]
    [InlineData("$.growing.kinds[4].kind", "Daikon-type radish [daikon-radish]")]
    [InlineData("$.materials.seedLots[1].tag[0]", "Oats, winter type [oats-winter]. Name one of them.")]
    [InlineData("$.materials.seedLots[4].kind", "Name one of them.")]
    public void Each_mistake_is_told_with_what_to_write_instead(string path, string said)
    {
        var told = PlanFile.Read(First).Problems;
        Assert.Equal(11, told.Length);
        Assert.Contains(said, told.Single(p => p.Path == path).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_second_writing_is_read_and_solved()
    {
        var reading = PlanFile.Read(Second);
        Assert.Empty(reading.Problems);
        var plan = reading.Plan!;
        Assert.Equal(0.4185, plan.Plot.Area.Acres, 5e-4);
        Assert.Equal(6, plan.SeedOffers.Length);
        var answers = plan.Solve();
        Assert.Contains(answers.Questions, q => q.Code == "lime-ask-basis");
        Assert.Equal(40, plan.Printed!.Phosphate!.Value.PoundsPerAcre);
    }

    /// <summary>A rate is half told where a weight stands alone; a unit that no rate has stays unknown.</summary>
    [Theory, InlineData("5 oz", "such as '5 oz/ac'"), InlineData("2 tons", "such as '2 ton/ac'"), InlineData("3 kg", "such as '3 kg/ha'"), InlineData("3 gal", "unknown unit 'gal'")]
    public void A_weight_in_place_of_a_rate_is_asked_for_its_ground(string typed, string said)
    {
        Assert.False(Amounts.TryReadRate(typed, out _, out string problem));
        Assert.Contains(said, problem, StringComparison.Ordinal);
    }
}
