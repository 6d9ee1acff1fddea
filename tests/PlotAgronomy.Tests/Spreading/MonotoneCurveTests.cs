using PlotAgronomy.Spreading;
namespace PlotAgronomy.Tests.Spreading;

public class MonotoneCurveTests
{
    [Fact]
    public void The_curve_refuses_what_it_cannot_draw()
    {
        Assert.Throws<ArgumentException>(() => new MonotoneCurve([1], [1]));
        Assert.Throws<ArgumentException>(() => new MonotoneCurve([1, 1], [1, 2]));
        Assert.Throws<ArgumentException>(() => new MonotoneCurve([2, 1], [1, 2]));
        Assert.Throws<ArgumentException>(() => new MonotoneCurve([1, double.NaN], [1, 2]));
        Assert.Throws<ArgumentException>(() => new MonotoneCurve([1, 2, 3], [1, 2]));
        var line = new MonotoneCurve([1, 3], [10, 20]);
        Assert.Equal(15, line.At(2));
        Assert.Throws<ArgumentOutOfRangeException>(() => line.At(0.999));
        Assert.Throws<ArgumentOutOfRangeException>(() => line.At(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => line.ArgumentOf(20.001));
    }

    [Fact]
    public void Only_a_rising_curve_is_read_backwards()
    {
        Assert.Equal(2, new MonotoneCurve([1, 3], [10, 20]).ArgumentOf(15), 12);
        Assert.Throws<InvalidOperationException>(() => new MonotoneCurve([1, 2, 3], [10, 10, 20]).ArgumentOf(15));
    }
}
