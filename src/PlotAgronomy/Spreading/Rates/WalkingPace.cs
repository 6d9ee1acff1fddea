using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Ground speed as a person measures it: seconds over a taped distance.</summary>
/// <remarks>88 ft/min is 1 mph, exact (DEF-UNITS). 3 mph is 22.73 s for 100 ft.</remarks>
public static class WalkingPace
{
    /// <summary>The walk over a field when nothing else is known.</summary>
    internal static Speed Usual => Speed.FromMilesPerHour(SpreadingConstants.All["usual-walk"]);

    /// <summary>Time to cover a distance.</summary>
    /// <param name="distance">Distance; above 0.</param>
    /// <param name="speed">Ground speed; above 0.</param>
    /// <returns>The time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static TimeSpan TimeFor(Length distance, Speed speed)
    {
        double seconds = SecondsFor(distance, speed);
        return seconds <= LongestSeconds
            ? TimeSpan.FromSeconds(seconds)
            : throw new ArgumentOutOfRangeException(
                nameof(speed),
                speed.MilesPerHour,
                FormattableString.Invariant($"Must be fast enough to end this walk within {LongestSeconds / 3600} h (mph).")
            );
    }

    /// <summary>Whether a walk ends within any time that can be told; a pace solved from a mistyped run may not.</summary>
    internal static bool Ends(Length distance, Speed speed) => SecondsFor(distance, speed) <= LongestSeconds;

    private static double LongestSeconds => SpreadingConstants.All["longest-walk"] * 3600;

    private static double SecondsFor(Length distance, Speed speed)
    {
        double feet = distance.Feet;
        double milesPerHour = speed.MilesPerHour;
        return SpreaderMath.SecondsForFeet(
            Guard.Above(feet, 0, "ft", nameof(distance)),
            Guard.Above(milesPerHour, 0, "mph", nameof(speed))
        );
    }

    /// <summary>Asks after a pace or a swath that no spreader has.</summary>
    /// <param name="pace">Ground speed.</param>
    /// <param name="swath">Effective swath; null when it is not asked.</param>
    /// <returns>A warning for each that lies outside what spreaders do; none where all is usual.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative pace or swath.</exception>
    public static ImmutableArray<Finding> Check(Speed pace, Length? swath = null)
    {
        double milesPerHour = pace.MilesPerHour;
        double? feet = swath?.Feet;
        Guard.AtLeast(milesPerHour, 0, "mph", nameof(pace));
        Guard.AtLeast(feet ?? 0, 0, "ft", nameof(swath));
        return [.. SpreadingPlausibility.Of(pace, swath)];
    }

    /// <summary>Speed of a timed walk.</summary>
    /// <param name="distance">Distance walked; above 0.</param>
    /// <param name="time">Time taken; above 0.</param>
    /// <returns>The ground speed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static Speed Over(Length distance, TimeSpan time)
    {
        double feet = distance.Feet;
        return Speed.FromMilesPerHour(
            SpreaderMath.MilesPerHour(
                Guard.Above(feet, 0, "ft", nameof(distance)),
                Guard.Above(time.TotalSeconds, 0, "s", nameof(time))
            )
        );
    }

    /// <summary>Error of a timed speed from the error of the time.</summary>
    /// <param name="distance">Distance walked; above 0.</param>
    /// <param name="time">Time taken; above 0.</param>
    /// <param name="timeError">How far the time may vary; at least 0.</param>
    /// <returns>The error of the speed, plus or minus.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>First order: speed x time error / time.</remarks>
    public static Speed ErrorOver(Length distance, TimeSpan time, TimeSpan timeError)
    {
        double milesPerHour = Over(distance, time).MilesPerHour;
        return Speed.FromMilesPerHour(
            milesPerHour * Guard.AtLeast(timeError.TotalSeconds, 0, "s", nameof(timeError)) / time.TotalSeconds
        );
    }

    /// <summary>Ground covered in an hour.</summary>
    /// <param name="speed">Ground speed; above 0.</param>
    /// <param name="swath">Effective swath; above 0.</param>
    /// <param name="efficiency">Part of the time spent spreading, the rest being turns and refills.</param>
    /// <returns>Area in one hour.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>ac/h = mph x ft x efficiency / 8.25; 8.25 = 43,560 / 5280. Source: SPREAD-S8.</remarks>
    public static Area AreaRate(Speed speed, Length swath, Fraction efficiency)
    {
        double milesPerHour = speed.MilesPerHour;
        double feet = swath.Feet;
        return Area.FromAcres(
            SpreaderMath.AcresPerMinute(
                Guard.Above(milesPerHour, 0, "mph", nameof(speed)),
                Guard.Above(feet, 0, "ft", nameof(swath))
            )
                * 60
                * efficiency.Value
        );
    }
}
