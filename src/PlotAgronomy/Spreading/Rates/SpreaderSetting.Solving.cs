using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <content>Rate, flow, speed and swath of a broadcast spreader, each from the other three.</content>
/// <remarks>R = 495 F / (v S), R in lb/ac, F in lb/min, v in mph, S in ft; 495 = 43,560 ft2/ac / 88 ft/min per mph, exact
/// (DEF-UNITS). The swath is the spacing of the passes, not the throw. Nothing is rounded. Slip, turns, overlap beyond the
/// swath and seed thrown outside the plot are not considered.</remarks>
public sealed partial class SpreaderSetting
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
