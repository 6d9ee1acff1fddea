using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Tests.Sheets;

/// <summary>What the front says first is no more than what is known.</summary>
/// <remarks>Expected: practice.</remarks>
public class FirstWordTests
{
    private static string Whole(string plan) => string.Join(' ', Text(plan).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static string Text(string plan) => FieldSheet.Of(TwoPagesTests.Answers(plan)).ToText(200, showWork: false);

    [Theory]
    [InlineData("samples/data/county-report.json", "Not sure yet: first answer how the plot drains")]
    [InlineData("samples/data/strip-reading.json", "Not sure yet: first answer the soil test, how the plot drains. If that fits, yes.")]
    public void Where_an_open_answer_may_forbid_a_kind_the_first_word_is_not_yes(string plan, string said) =>
        Assert.Contains(said, Whole(plan), StringComparison.Ordinal);

    /// <summary>The laboratory asks 60 lb/ac of nitrogen; what the bags bring is part of it.</summary>
    [Fact]
    public void Nitrogen_that_comes_along_is_held_against_the_whole_season()
    {
        string sheet = Whole("samples/data/county-report.json");
        Assert.Contains("of the 60 lb/ac of N that the season needs", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("nobody asked for", sheet, StringComparison.Ordinal);
    }

    /// <summary>Balansa clover stands pH 4.8 and the sand has just that.</summary>
    [Fact]
    public void A_stand_in_at_its_last_tenth_is_said_to_be_at_the_edge()
    {
        var stand = TwoPagesTests.Answers("tests/PlotAgronomy.Tests/Plans/p01-sand-nc.json").Verdict.Value.Substitutes.Single(s => s.Kind.ShortName == "Balansa clover");
        Assert.Equal(4.8, stand.LowestPh);
        Assert.Contains("Balansa clover (at the edge of what it stands)", Whole("tests/PlotAgronomy.Tests/Plans/p01-sand-nc.json"), StringComparison.Ordinal);
    }

    /// <summary>No boron goes on: its caution is kept, behind.</summary>
    [Fact]
    public void What_is_not_on_the_sheet_is_not_cautioned_of_on_its_front()
    {
        var field = TwoPagesTests.Answers("tests/PlotAgronomy.Tests/Plans/p03-clay-smp59-oh.json").Field;
        Assert.DoesNotContain(field.Watched, f => f.Code == "nutrient-boron-toxicity");
        Assert.Contains(field.Behind, f => f.Code == "nutrient-boron-toxicity");
    }

    /// <summary>What is weighed for the plot must last over all that the passes cover: the test run and the whole walk give one
    /// load.</summary>
    [Fact]
    public void Lime_fertilizer_and_seed_are_spread_over_the_same_passes()
    {
        var field = TwoPagesTests.Answers("samples/data/frost-seeding.json").Field;
        double path = field.Walks[^1].Seed!.Laid.Value.Path.Feet;
        Assert.Equal(3, field.Walks.Length);
        Assert.All(field.Walks, w => Assert.Equal(w.Pass.Load.Pounds, w.Pass.TestRunCatch.Pounds * path / w.Pass.TestRun.Feet, w.Pass.Load.Pounds * 0.01));
    }
}
