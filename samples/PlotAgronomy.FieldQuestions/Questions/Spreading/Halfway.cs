using PlotAgronomy.Spreading;

namespace PlotAgronomy.FieldQuestions.Spreading;

/// <summary>Forty pounds of oats for four tenths of an acre, with the gate at 6 for a walk of three miles an hour. After a
/// third of the plot 17 pounds were gone.</summary>
internal static class Halfway
{
    internal static void Answer(TextWriter output)
    {
        var (load, plot) = (Mass.FromPounds(40), Area.FromAcres(0.4));
        var gates = GateTable.FromPoints("oats", [Gate(4, 2.1), Gate(5, 3.4), Gate(6, 4.9), Gate(7, 6.3)]);

        // A helper timed 100 feet at 26 seconds: is the slow walk to blame?
        var walked = WalkingPace.Over(Length.FromFeet(100), TimeSpan.FromSeconds(26));
        var slow = ChangedRate.AtSpeed(ApplicationRate.FromMassAndArea(load, plot), Speed.FromMilesPerHour(3), walked);
        output.Tell(slow);
        output.WriteLine($"By the walk alone the oats would last for {Amounts.Print(100 * slow.CoveredShare, 0)} % of the plot.");

        var third = SowingProgress.After(load, plot, [Left(0.13, 23)]);
        output.Tell(third);
        if (third.NewPace(walked) is { } faster)
        {
            output.WriteLine($"With the gate left, {Amounts.Print(faster, decimals: 1)} from here on.");
            output.Warn(WalkingPace.Check(faster));
        }

        if (third.NewGate(gates, setting: 6) is { } closed)
        {
            output.WriteLine("Or close the gate and keep the pace:");
            output.Tell(closed);
        }

        // The gate was closed there; a second weighing followed, and half a pound came home.
        var later = SowingProgress.After(load, plot, [Left(0.13, 23, settingChanged: true), Left(0.28, 10)]);
        string needed = Amounts.Print(later.RateNeeded!.Value, decimals: 0);
        output.WriteLine($"Since then {Amounts.Print(later.RateNow!.Value, decimals: 0)}, and {needed} ends it with the plot.");
        output.WriteLine($"Thick and thin leave the plot {Amounts.Print(later.EvennessWholeCvPercent!.Value, 0)} % uneven.");
        output.Warn(later.Findings);
        output.Tell(MeasuredRate.WholePlot(Mass.FromPounds(39.5), plot, new MeasuringErrors { Scale = Mass.FromPounds(0.5) }));
    }

    private static HopperCheck Left(double acresDone, double pounds, bool settingChanged = false) =>
        HopperCheck.FromWeighing(Area.FromAcres(acresDone), Mass.FromPounds(pounds), settingChanged);

    private static GatePoint Gate(double setting, double poundsPerMinute) =>
        GatePoint.FromFlow(setting, MassFlow.FromPoundsPerMinute(poundsPerMinute));
}
