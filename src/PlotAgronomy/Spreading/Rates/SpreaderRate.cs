using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Rate, flow, speed and swath of a broadcast spreader, each from the other three.</summary>
/// <remarks>R = 495 F / (v S), R in lb/ac, F in lb/min, v in mph, S in ft; 495 = 43,560 ft2/ac / 88 ft/min per mph, exact
/// (DEF-UNITS). The swath is the spacing of the passes, not the throw. Nothing is rounded. Slip, turns, overlap beyond the
/// swath and seed thrown outside the plot are not considered.</remarks>
public static class SpreaderRate
{
    /// <summary>Rate on the ground from a flow.</summary>
    /// <param name="flow">Flow leaving the hopper; above 0.</param>
    /// <param name="speed">Ground speed; above 0.</param>
    /// <param name="swath">Effective swath, the spacing of the passes; above 0.</param>
    /// <returns>All four, with the rate solved.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>R = 495 F / (v S).</remarks>
    public static SpreaderSetting FromFlow(MassFlow flow, Speed speed, Length swath)
    {
        double poundsPerMinute = Positive(flow);
        double milesPerHour = Positive(speed);
        double feet = Positive(swath);
        return Setting(
            SpreaderUnknown.Rate,
            SpreaderMath.PoundsPerAcre(poundsPerMinute, milesPerHour, feet),
            poundsPerMinute,
            milesPerHour,
            feet
        );
    }

    /// <summary>Flow that gives a rate.</summary>
    /// <param name="rate">Rate wanted; above 0.</param>
    /// <param name="speed">Ground speed; above 0.</param>
    /// <param name="swath">Effective swath; above 0.</param>
    /// <returns>All four, with the flow solved.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>F = R v S / 495.</remarks>
    public static SpreaderSetting FlowFor(ApplicationRate rate, Speed speed, Length swath)
    {
        double poundsPerAcre = Positive(rate);
        double milesPerHour = Positive(speed);
        double feet = Positive(swath);
        return Setting(
            SpreaderUnknown.Flow,
            poundsPerAcre,
            SpreaderMath.PoundsPerMinute(poundsPerAcre, milesPerHour, feet),
            milesPerHour,
            feet
        );
    }

    /// <summary>Speed at which a flow gives a rate.</summary>
    /// <param name="rate">Rate wanted; above 0.</param>
    /// <param name="flow">Flow leaving the hopper; above 0.</param>
    /// <param name="swath">Effective swath; above 0.</param>
    /// <returns>All four, with the speed solved.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>v = 495 F / (R S).</remarks>
    public static SpreaderSetting SpeedFor(ApplicationRate rate, MassFlow flow, Length swath)
    {
        double poundsPerAcre = Positive(rate);
        double poundsPerMinute = Positive(flow);
        double feet = Positive(swath);
        return Setting(
            SpreaderUnknown.Speed,
            poundsPerAcre,
            poundsPerMinute,
            SpreaderMath.MilesPerHour(poundsPerAcre, poundsPerMinute, feet),
            feet
        );
    }

    /// <summary>Swath at which a flow gives a rate.</summary>
    /// <param name="rate">Rate wanted; above 0.</param>
    /// <param name="flow">Flow leaving the hopper; above 0.</param>
    /// <param name="speed">Ground speed; above 0.</param>
    /// <returns>All four, with the swath solved. Whether the pattern stays even at this swath is another question.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>S = 495 F / (R v).</remarks>
    public static SpreaderSetting SwathFor(ApplicationRate rate, MassFlow flow, Speed speed)
    {
        double poundsPerAcre = Positive(rate);
        double poundsPerMinute = Positive(flow);
        double milesPerHour = Positive(speed);
        return Setting(
            SpreaderUnknown.Swath,
            poundsPerAcre,
            poundsPerMinute,
            milesPerHour,
            SpreaderMath.SwathFeet(poundsPerAcre, poundsPerMinute, milesPerHour)
        );
    }

    /// <summary>The rate that lands when passes are spaced otherwise than the swath the gate was set for.</summary>
    /// <param name="rate">Rate the gate was set for; above 0.</param>
    /// <param name="calibratedSwath">Swath of the calibration; above 0.</param>
    /// <param name="passSpacing">Spacing really walked; above 0.</param>
    /// <returns>The rate, with a finding when the two differ.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>R' = R x S / S'.</remarks>
    public static ChangedRate AtSpacing(ApplicationRate rate, Length calibratedSwath, Length passSpacing)
    {
        double poundsPerAcre = Positive(rate);
        double set = calibratedSwath.Feet;
        double walked = passSpacing.Feet;
        double actual =
            poundsPerAcre
            * Guard.Above(set, 0, "ft", nameof(calibratedSwath))
            / Guard.Above(walked, 0, "ft", nameof(passSpacing));
        return new()
        {
            Intended = rate,
            Actual = ApplicationRate.FromPoundsPerAcre(actual),
            Findings = Differ(set, walked)
                ?
                [
                    FindingCatalog.Create(
                        "spread-swath-differs",
                        ("calibrated", Amounts.Print(set, 2)),
                        ("walked", Amounts.Print(walked, 2)),
                        ("change", Amounts.Print((actual / poundsPerAcre - 1) * 100, 1))
                    ),
                ]
                : [],
            Lines = () =>
                [
                    new(
                        "Rate",
                        "rate x swath of the calibration / spacing of the passes",
                        $"{Amounts.Print(poundsPerAcre, 3)} x {Amounts.Print(set, 3)} / {Amounts.Print(walked, 3)} = "
                            + $"{Amounts.Print(actual, 3)} lb/ac"
                    ),
                ],
        };
    }

    /// <summary>The rate that lands when the pace is not the one the gate was set for.</summary>
    /// <param name="rate">Rate the gate was set for; above 0.</param>
    /// <param name="plannedSpeed">Speed the gate was set for; above 0.</param>
    /// <param name="actualSpeed">Speed really kept; above 0.</param>
    /// <returns>The rate, with a finding when it misses the rate by more than 5 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>R' = R x v / v'. For hand-cranked and motor-driven machines; one metered by its ground wheel does not
    /// care.</remarks>
    public static ChangedRate AtSpeed(ApplicationRate rate, Speed plannedSpeed, Speed actualSpeed)
    {
        double poundsPerAcre = Positive(rate);
        double planned = plannedSpeed.MilesPerHour;
        double kept = actualSpeed.MilesPerHour;
        double actual =
            poundsPerAcre
            * Guard.Above(planned, 0, "mph", nameof(plannedSpeed))
            / Guard.Above(kept, 0, "mph", nameof(actualSpeed));
        double change = (actual / poundsPerAcre - 1) * 100;
        return new()
        {
            Intended = rate,
            Actual = ApplicationRate.FromPoundsPerAcre(actual),
            Findings = Tolerance.IsAbove(Math.Abs(change), SpreadingConstants.All["target-tolerance"])
                ?
                [
                    FindingCatalog.Create(
                        "spread-pace-differs",
                        ("planned", Amounts.Print(planned, 2)),
                        ("kept", Amounts.Print(kept, 2)),
                        ("change", Amounts.Print(change, 1))
                    ),
                ]
                : [],
            Lines = () =>
                [
                    new(
                        "Rate",
                        "rate x planned speed / speed kept",
                        $"{Amounts.Print(poundsPerAcre, 3)} x {Amounts.Print(planned, 3)} / {Amounts.Print(kept, 3)} = "
                            + $"{Amounts.Print(actual, 3)} lb/ac"
                    ),
                ],
        };
    }

    private static bool Differ(double a, double b) => !Tolerance.AreEqual(a, b);

    private static SpreaderSetting Setting(
        SpreaderUnknown solved,
        double poundsPerAcre,
        double poundsPerMinute,
        double milesPerHour,
        double feet
    ) =>
        new()
        {
            SolvedFor = solved,
            Rate = ApplicationRate.FromPoundsPerAcre(poundsPerAcre),
            Flow = MassFlow.FromPoundsPerMinute(poundsPerMinute),
            Speed = Speed.FromMilesPerHour(milesPerHour),
            Swath = Length.FromFeet(feet),
        };

    private static double Positive(ApplicationRate rate) => Guard.Above(rate.PoundsPerAcre, 0, "lb/ac", nameof(rate));

    private static double Positive(MassFlow flow)
    {
        double poundsPerMinute = flow.PoundsPerMinute;
        return Guard.Above(poundsPerMinute, 0, "lb/min", nameof(flow));
    }

    private static double Positive(Speed speed)
    {
        double milesPerHour = speed.MilesPerHour;
        return Guard.Above(milesPerHour, 0, "mph", nameof(speed));
    }

    private static double Positive(Length swath)
    {
        double feet = swath.Feet;
        return Guard.Above(feet, 0, "ft", nameof(swath));
    }
}
