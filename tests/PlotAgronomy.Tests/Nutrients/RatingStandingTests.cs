using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>Classes of a dozen vocabularies in words that compare.</summary>
public class RatingStandingTests
{
    /// <summary>Practice, from the words of the institutions: "high" is enough in Georgia and more than enough in Iowa; "sufficient" is enough in South Carolina
    /// and beyond the limit in the Tri-State system of 2020.</summary>
    [Theory]
    [InlineData("GA", "high", RatingStanding.Enough), InlineData("IA-2013", "high", RatingStanding.Above)]
    [InlineData("SC", "sufficient", RatingStanding.Enough), InlineData("TS-2020", "sufficient", RatingStanding.Above)]
    [InlineData("NJ", "high (optimum)", RatingStanding.Enough), InlineData("WI", "excessively high", RatingStanding.Excessive)]
    [InlineData("NE", "responsive", RatingStanding.Below), InlineData("SALT", "non-saline", RatingStanding.NotComparable)]
    public void One_word_says_different_things(string system, string name, RatingStanding standing)
    {
        Assert.True(RatingSystem.TryFind(system, out var rating, out _));
        var classes = rating!.Scales.SelectMany(s => s.Classes).Where(c => c.Name == name).ToList();
        Assert.NotEmpty(classes);
        Assert.All(classes, c => Assert.Equal(standing, c.Standing));
    }

    [Fact]
    public void A_standing_never_falls_as_the_class_rises()
    {
        foreach (var scale in RatingSystem.All.Concat(RatingSystem.Unchecked).SelectMany(s => s.Scales))
        {
            var standings = scale.Classes.Select(c => c.Standing).ToList();
            Assert.True(standings.Order().SequenceEqual(standings), scale.Id);
            Assert.True(standings.All(s => s == RatingStanding.NotComparable) || standings.All(s => s != RatingStanding.NotComparable), scale.Id);
        }
    }

    /// <summary>By hand on North Carolina's limits of 25 and 50: less than 5 is low whatever it is, less than 40 may be medium or low.</summary>
    [Theory]
    [InlineData(5, false), InlineData(40, true)]
    public void Less_than_stays_less_than_and_the_rating_says_whether_it_matters(double printed, bool matters)
    {
        var reading = SystemRequests.PIndex(printed) with { IsUpperLimit = true };
        var rating = RatingSystem.NorthCarolina.Rate(new SoilReport { Laboratory = "North Carolina", Readings = [reading] }).For(SoilAnalyte.Phosphorus)!;
        Assert.StartsWith("phosphorus less than", reading.ToString(), StringComparison.Ordinal);
        Assert.Equal(matters, rating.HangsOnTrueValue);
        Assert.Equal(matters, rating.ToString().Contains("or poorer", StringComparison.Ordinal));
    }
}
