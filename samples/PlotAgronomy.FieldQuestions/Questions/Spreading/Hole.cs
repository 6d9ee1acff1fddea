using PlotAgronomy.Spreading;

namespace PlotAgronomy.FieldQuestions.Spreading;

/// <summary>A pail over a spinner with a plate to be drilled, for 12 pounds an acre of browntop millet; ten grains were laid
/// along a rule, and a quart weighed.</summary>
internal static class Hole
{
    internal static void Answer(TextWriter output)
    {
        var wanted = ApplicationRate.FromPoundsPerAcre(12);
        var (pace, swath) = (Speed.FromMilesPerHour(3), Length.FromFeet(14));
        var millet = GrainFlow.For(Length.FromMillimeters(2.1), OfQuart(1.35));
        var needed = SpreaderSetting.FlowFor(wanted, pace, swath);
        output.Tell(needed);
        output.Tell(millet.ShowWork(needed.Flow));

        var (drill, sixteenths) = DrillUpTo(millet.HoleFor(needed.Flow));
        var flow = millet.Through(drill);
        output.WriteLine($"Drill {sixteenths} of an inch: {Amounts.Print(flow, decimals: 2)} should run through.");
        var closer = SpreaderSetting.SwathFor(wanted, flow, pace);
        output.WriteLine($"For that the passes would be {Amounts.Print(closer.Swath, "ft", 1)} apart.");

        // Two pounds ran out after 420 feet and 97 seconds.
        var run = MeasuredRate.RunOut(Mass.FromPounds(2), Length.FromFeet(420), swath, time: TimeSpan.FromSeconds(97));
        output.Tell(run);
        double times = run.Flow!.Value / flow;
        output.WriteLine($"This plate lets {Amounts.Print(times, 2)} times as much through as the law says. Trust the run:");
        output.WriteLine($"{DrillUpTo(millet.HoleFor(needed.Flow / times)).Told} for the next plate.");

        // The law compares seeds better than it tells amounts.
        var clover = GrainFlow.For(Length.FromMillimeters(1.2), OfQuart(1.6));
        output.WriteLine($"Clover would run out of the first {Amounts.Print(clover.Through(drill) / flow, 1)} times as fast:");
        output.Tell(clover.ShowWork(drill));
    }

    /// <summary>Drills come in sixteenths of an inch.</summary>
    private static (Length Drill, string Told) DrillUpTo(Length hole)
    {
        double sixteenths = Math.Floor(hole.Inches * 16);
        return (Length.FromInches(sixteenths / 16), $"{Amounts.Print(sixteenths, 0)} sixteenths");
    }

    private static Density OfQuart(double pounds) => Mass.FromPounds(pounds) / Volume.FromUsQuarts(1);
}
