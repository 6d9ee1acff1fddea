using PlotAgronomy.Fertilizers;

namespace PlotAgronomy.Tests.Fertilizers.Solver;

public class WholeCountTests
{
    [Theory]
    [InlineData(-1e-10, 0, 0, true), InlineData(0, 0, 0, true), InlineData(1e-10, 0, 0, true), InlineData(1e-9, 0, 0, true)]
    [InlineData(5e-8, 0, 1, false), InlineData(0.5, 0, 1, false)]
    [InlineData(1.99999999, 2, 2, true), InlineData(2, 2, 2, true), InlineData(2.00000001, 2, 2, true), InlineData(2.000001, 2, 3, false)]
    public void Dust_is_no_package_and_a_trace_is(double packages, double below, double above, bool whole)
    {
        Assert.Equal(below, WholeCount.Below(packages));
        Assert.Equal(above, WholeCount.Above(packages));
        Assert.Equal(whole, WholeCount.IsWhole(packages));
    }
}
