using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <content>Weights set against ground: trays, wheel turns, a whole plot.</content>
public sealed partial class MeasuredRate
{
    /// <summary>Rate of a catch on trays or a tarp.</summary>
    /// <param name="caught">Weight on all trays; above 0.</param>
    /// <param name="trayArea">Area of all trays; above 0.</param>
    /// <param name="errors">Measuring errors; null counts every measurement as exact.</param>
    /// <returns>The rate where the trays lay, not the mean over the swath, with a finding that says so.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>R = lb x 43,560 / ft2. Trays do not catch everything (SPREAD-S23B) and hard ground bounces granules into them
    /// (SPREAD-S24): set the gate by a weighed run, and use trays for the pattern.</remarks>
    public static MeasuredRate TrayCatch(Mass caught, Area trayArea, MeasuringErrors? errors = null)
    {
        double pounds = caught.Pounds;
        double squareFeet = trayArea.SquareFeet;
        double rate = SpreaderMath.PoundsPerAcreOverArea(
            Guard.Above(pounds, 0, "lb", nameof(caught)),
            Guard.Above(squareFeet, 0, "ft2", nameof(trayArea))
        );
        return new()
        {
            Method = CalibrationMethod.TrayCatch,
            Rate = ApplicationRate.FromPoundsPerAcre(rate),
            Weighed = caught,
            Covered = trayArea,
            Error = RateErrorBudget.Of(RateErrorBudget.Weight(errors ?? MeasuringErrors.None, pounds)),
            Lines = () => [RateLine("spread-rate-on-trays", pounds, rate, ("tray area", Amounts.Print(squareFeet, 3)))],
        };
    }

    /// <summary>Rate of a drill, cultipacker or drop seeder whose wheel was turned in the shop.</summary>
    /// <param name="caught">Weight from the rows collected; above 0.</param>
    /// <param name="turns">Turns of the ground wheel; above 0.</param>
    /// <param name="circumference">Wheel circumference, best taken in the field; above 0.</param>
    /// <param name="rows">Rows collected; at least 1. A drop seeder is one row as wide as its hopper.</param>
    /// <param name="rowSpacing">Distance between rows; above 0.</param>
    /// <param name="skid">Part of the distance the wheel skids in the field.</param>
    /// <param name="errors">Measuring errors; null counts every measurement as exact.</param>
    /// <returns>The rate with its error.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>R = lb x 43,560 / (rows x spacing x circumference x turns) x (1 - skid). Source: SPREAD-S1; skid is
    /// geometry.</remarks>
    public static MeasuredRate WheelTurns(
        Mass caught,
        double turns,
        Length circumference,
        int rows,
        Length rowSpacing,
        Fraction skid = default,
        MeasuringErrors? errors = null
    )
    {
        double pounds = caught.Pounds;
        double wheelFeet = circumference.Feet;
        double rowFeet = rowSpacing.Feet;
        double distance = Guard.Above(turns, 0, "turns") * Guard.Above(wheelFeet, 0, "ft", nameof(circumference));
        double width = Guard.AtLeast(rows, 1, "rows") * Guard.Above(rowFeet, 0, "ft", nameof(rowSpacing));
        double ground = SpreaderMath.SquareFeetOfWheel(rows, rowFeet, wheelFeet, turns);
        double rate = SpreaderMath.PoundsPerAcreByWheel(Guard.Above(pounds, 0, "lb", nameof(caught)), ground, skid.Value);
        return new()
        {
            Method = CalibrationMethod.WheelTurns,
            Rate = ApplicationRate.FromPoundsPerAcre(rate),
            Weighed = caught,
            Covered = Area.FromSquareFeet(ground),
            Error = RateErrorBudget.Of(
                RateErrorBudget.Weight(errors ?? MeasuringErrors.None, pounds),
                RateErrorBudget.Distance(errors ?? MeasuringErrors.None, distance),
                RateErrorBudget.Swath(errors ?? MeasuringErrors.None, width)
            ),
            Lines = () =>
                [
                    SpreadingFormulas
                        .All["spread-ground-of-wheel"]
                        .Line(
                            $"{Amounts.Print(ground, 3)} ft2",
                            ("rows", Amounts.Print(rows, 0)),
                            ("spacing", Amounts.Print(rowFeet, 4)),
                            ("circumference", Amounts.Print(wheelFeet, 4)),
                            ("turns", Amounts.Print(turns, 2))
                        ),
                    RateLine(
                        "spread-rate-of-wheel",
                        pounds,
                        rate,
                        ("ground", Amounts.Print(ground, 3)),
                        ("skid", Amounts.Print(skid.Value, 3))
                    ),
                ],
        };
    }

    /// <summary>Rate a whole plot got: what was loaded less what was left, over its area. It is what belongs in the
    /// notes.</summary>
    /// <param name="spread">Weight spread, not the weight bought; above 0.</param>
    /// <param name="plot">Plot area; above 0.</param>
    /// <param name="errors">Measuring errors, of which the scale's counts; null counts it as exact.</param>
    /// <returns>The rate, with a finding that says which weight to write down.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>R = lb / ac.</remarks>
    public static MeasuredRate WholePlot(Mass spread, Area plot, MeasuringErrors? errors = null)
    {
        double pounds = spread.Pounds;
        double squareFeet = plot.SquareFeet;
        double rate = SpreaderMath.PoundsPerAcreOverArea(
            Guard.Above(pounds, 0, "lb", nameof(spread)),
            Guard.Above(squareFeet, 0, "ft2", nameof(plot))
        );
        return new()
        {
            Method = CalibrationMethod.WholePlot,
            Rate = ApplicationRate.FromPoundsPerAcre(rate),
            Weighed = spread,
            Covered = plot,
            Error = RateErrorBudget.Of(RateErrorBudget.Weight(errors ?? MeasuringErrors.None, pounds)),
            Lines = () => [RateLine("spread-rate-on-plot", pounds, rate, ("plot", Amounts.Print(squareFeet, 1)))],
        };
    }
}
