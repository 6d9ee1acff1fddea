using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

/// <summary>The sums people look for, as the page shows them.</summary>
public class SpreadingSumsDocExample
{
    [Fact]
    public void The_sums_of_the_page_are_what_the_code_writes() =>
        DocExample.AssertCurrent("docs/spreading.md", "tests/PlotAgronomy.Tests/Spreading/SpreadingSumsDocExample.cs", Run, block: 1);

    internal static void Run(TextWriter output)
    {
        // begin example
        // Turns of a drill wheel for a tenth of an acre, and land covered in an hour.
        output.WriteLine($"{Amounts.Print(MeasuredRate.WheelTurnsFor(Length.FromFeet(726), Length.FromInches(24)), 1)} turns over 726 ft");
        Amounts.TryReadSpeed("2.5 mph", out var pace, out _);
        var hour = WalkingPace.AreaRate(pace, Length.FromFeet(15), Fraction.FromPercent(80));
        output.WriteLine($"{Amounts.Print(hour, "ac", 2)} in an hour");

        // Set for 3 mph and walked slower: what lands, and how far the seed goes.
        var slow = ChangedRate.AtSpeed(ApplicationRate.FromPoundsPerAcre(8), Speed.FromMilesPerHour(3), pace);
        output.WriteLine($"{Amounts.Print(slow.Actual, "lb/ac", 1)}; the seed ends at {Amounts.Print(Fraction.FromValue(slow.CoveredShare), 0)} of the plot");

        // A round hole for 0.8 lb/min of oats.
        var oats = GrainFlow.For(Length.FromMillimeters(3.2), Density.FromPoundsPerCubicFoot(26));
        var hole = oats.HoleFor(MassFlow.FromPoundsPerMinute(0.8));
        output.WriteLine($"a hole of {Amounts.Print(hole, "in", 2)} lets {Amounts.Print(oats.Through(hole), "lb/min", 2)} pass");
        output.WriteLine($"a bucket of 5 gal holds {Amounts.Print(MeasuredBucket.FromVolume(Volume.FromUsGallons(5), Density.FromPoundsPerCubicFoot(26)).Holds, "lb", 1)} of oats");

        // Too much seed was gone after a quarter of the plot: which gate ends it with the plot?
        var gates = GateTable.FromPoints("oats", [
            GatePoint.FromFlow(2, MassFlow.FromPoundsPerMinute(0.5)), GatePoint.FromFlow(3, MassFlow.FromPoundsPerMinute(0.8))]);
        var progress = SowingProgress.After(Mass.FromPounds(2), Area.FromAcres(0.25), [HopperCheck.FromWeighing(Area.FromAcres(0.0625), Mass.FromPounds(1.4))]);
        output.WriteLine($"gate {Amounts.Print(progress.NewGate(gates, setting: 3)!.Setting!.Value, 2)}");

        // How wide may the swath be for each shape of a throw of 20 ft?
        var half = Length.FromFeet(10);
        (string Name, SpreadPattern Pattern)[] shapes =
        [
            ("triangle", SpreadPattern.Triangle(half, half)), ("trapezoid", SpreadPattern.Trapezoid(half, half * 2)),
            ("bell", SpreadPattern.Bell(half / 3)), ("parabola", SpreadPattern.Parabola(half)),
            ("half ellipse", SpreadPattern.SemiEllipse(half)), ("cosine lobe", SpreadPattern.CosineLobe(half)),
            ("raised cosine", SpreadPattern.RaisedCosine(half)),
        ];
        foreach (var (name, pattern) in shapes)
        {
            string widest = SwathAdvice.For(pattern, DrivingMethod.BackAndForth).Recommended is { } swath ? Amounts.Print(swath, "ft", 1) : "no swath";
            output.WriteLine($"{name}: {widest}");
        }
        // end example
    }
}
