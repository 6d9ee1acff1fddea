using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <content>What lands when spacing or pace is not what the gate was set for.</content>
public sealed partial class ChangedRate
{
    /// <summary>The rate that lands when passes are spaced otherwise than the swath the gate was set for.</summary>
    /// <param name="rate">Rate the gate was set for; above 0.</param>
    /// <param name="calibratedSwath">Swath of the calibration; above 0.</param>
    /// <param name="passSpacing">Spacing really walked; above 0.</param>
    /// <returns>The rate, with a finding when the two differ.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>R' = R x S / S'.</remarks>
    public static ChangedRate AtSpacing(ApplicationRate rate, Length calibratedSwath, Length passSpacing)
    {
        double poundsPerAcre = Guard.Above(rate.PoundsPerAcre, 0, "lb/ac", nameof(rate));
        double set = calibratedSwath.Feet;
        double walked = passSpacing.Feet;
        double actual = SpreaderMath.PoundsPerAcreAtSpacing(
            poundsPerAcre,
            Guard.Above(set, 0, "ft", nameof(calibratedSwath)),
            Guard.Above(walked, 0, "ft", nameof(passSpacing))
        );
        return new()
        {
            Intended = rate,
            Actual = ApplicationRate.FromPoundsPerAcre(actual),
            IsOfSpacing = true,
            Planned = set,
            Kept = walked,
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
        double poundsPerAcre = Guard.Above(rate.PoundsPerAcre, 0, "lb/ac", nameof(rate));
        double planned = plannedSpeed.MilesPerHour;
        double kept = actualSpeed.MilesPerHour;
        double actual = SpreaderMath.PoundsPerAcreAtSpeed(
            poundsPerAcre,
            Guard.Above(planned, 0, "mph", nameof(plannedSpeed)),
            Guard.Above(kept, 0, "mph", nameof(actualSpeed))
        );
        return new()
        {
            Intended = rate,
            Actual = ApplicationRate.FromPoundsPerAcre(actual),
            IsOfSpacing = false,
            Planned = planned,
            Kept = kept,
        };
    }
}
