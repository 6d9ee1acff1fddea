using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <content>What lands when spacing or pace is not what the gate was set for.</content>
public static partial class SpreaderRate
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
        double poundsPerAcre = Positive(rate);
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
            Findings = !Tolerance.AreEqual(set, walked)
                ?
                [
                    FindingCatalog.Create(
                        SpreadingCodes.SwathDiffers,
                        ("calibrated", Amounts.Print(set, 2)),
                        ("walked", Amounts.Print(walked, 2)),
                        ("change", Amounts.Print((actual / poundsPerAcre - 1) * 100, 1))
                    ),
                ]
                : [],
            Lines = () =>
                [
                    SpreadingFormulas
                        .All["spread-rate-at-spacing"]
                        .Line(
                            $"{Amounts.Print(actual, 3)} lb/ac",
                            ("rate", Amounts.Print(poundsPerAcre, 3)),
                            ("swath of the calibration", Amounts.Print(set, 3)),
                            ("spacing of the passes", Amounts.Print(walked, 3))
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
        double actual = SpreaderMath.PoundsPerAcreAtSpeed(
            poundsPerAcre,
            Guard.Above(planned, 0, "mph", nameof(plannedSpeed)),
            Guard.Above(kept, 0, "mph", nameof(actualSpeed))
        );
        double change = (actual / poundsPerAcre - 1) * 100;
        return new()
        {
            Intended = rate,
            Actual = ApplicationRate.FromPoundsPerAcre(actual),
            Findings = Tolerance.IsAbove(Math.Abs(change), SpreadingConstants.All["target-tolerance"])
                ?
                [
                    FindingCatalog.Create(
                        SpreadingCodes.PaceDiffers,
                        ("planned", Amounts.Print(planned, 2)),
                        ("kept", Amounts.Print(kept, 2)),
                        ("change", Amounts.Print(change, 1))
                    ),
                ]
                : [],
            Lines = () =>
                [
                    SpreadingFormulas
                        .All["spread-rate-at-speed"]
                        .Line(
                            $"{Amounts.Print(actual, 3)} lb/ac",
                            ("rate", Amounts.Print(poundsPerAcre, 3)),
                            ("planned speed", Amounts.Print(planned, 3)),
                            ("speed kept", Amounts.Print(kept, 3))
                        ),
                ],
        };
    }
}
