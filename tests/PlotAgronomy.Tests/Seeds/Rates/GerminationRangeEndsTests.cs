using PlotAgronomy.Seeds;

namespace PlotAgronomy.Tests.Seeds;

/// <summary>The exact 95 % range where none or all of the seeds germinated: one end is the limit itself, the other has a closed
/// form.</summary>
public class GerminationRangeEndsTests
{
    [Theory]
    [InlineData(25)]
    [InlineData(100)]
    [InlineData(400)]
    public void Where_none_germinated_the_range_begins_at_nothing(double seeds)
    {
        // Clopper and Pearson: nothing germinates of n seeds with 2.5 % chance where (1 - p) to the n is 0.025.
        var (low, high) = SeedMath.Exact(0, seeds);
        Assert.Equal(0, low);
        Assert.Equal(1 - Math.Pow(0.025, 1 / seeds), high, 1e-12);
    }

    [Theory]
    [InlineData(25)]
    [InlineData(100)]
    [InlineData(400)]
    public void Where_all_germinated_the_range_ends_at_all(double seeds)
    {
        var (low, high) = SeedMath.Exact(seeds, seeds);
        Assert.Equal(1, high);
        Assert.Equal(Math.Pow(0.025, 1 / seeds), low, 1e-12);
    }
}
