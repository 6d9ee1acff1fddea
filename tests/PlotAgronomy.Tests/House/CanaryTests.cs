using FsCheck.Xunit;

namespace PlotAgronomy.Tests.House;

public class CanaryTests
{
    [Fact]
    public void A_fact_is_discovered() => Assert.True(true);

    [Property]
    public bool A_property_is_discovered(int number) => number + 0 == number;
}
