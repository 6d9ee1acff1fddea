using FsCheck.Xunit;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

public class ThrowDistanceTests
{
    private const string Worked = "Spreading/worked-throw.csv";

    public static TheoryData<string> Ids => WorkedExamples.Ids(Worked);

    [Theory, MemberData(nameof(Ids))]
    public void Throw_matches_the_second_integration(string id)
    {
        var row = WorkedExamples.Find(Worked, id);
        WorkedExamples.AssertMatches(row, Throw(row.Number("launch_m_s"), row.Number("terminal_m_s"), row.Number("height_m")));
    }

    [Property(MaxTest = 40)]
    public bool A_faster_launch_and_a_heavier_grain_fly_farther(FsCheck.PositiveInt launch, FsCheck.PositiveInt terminal)
    {
        double v = 3 + (launch.Get % 20);
        double vt = 2 + (terminal.Get % 15);
        return Throw(v + 1, vt, 1) > Throw(v, vt, 1) && Throw(v, vt + 1, 1) > Throw(v, vt, 1) && Throw(v, vt, 1) < v * Math.Sqrt(2 / 9.80665) * 1.5;
    }

    [Fact]
    public void The_lightest_grain_and_the_fastest_launch_stay_computable() => Assert.InRange(Throw(100, 0.5, 1), 0.05, 1);

    [Theory, InlineData(0), InlineData(-1)]
    public void Speed_and_height_must_be_above_zero(double bad)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Throw(bad, 6, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Throw(8, bad, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Throw(8, 6, bad));
        Assert.Throws<ArgumentOutOfRangeException>(() => Throw(8, 0.499, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Throw(100.1, 6, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Throw(8, 6, 100.1));
    }

    private static double Throw(double launch, double terminal, double height) => SpreadPattern.ThrowDistance(
        Speed.FromMetersPerSecond(launch), Speed.FromMetersPerSecond(terminal), Length.FromMeters(height)).Meters;
}
