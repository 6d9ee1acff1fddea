using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <content>The ways people measure what a spreader really puts down.</content>
/// <remarks>Rate = weight / ground covered; 43,560 ft2 is one acre, exact (DEF-UNITS). Hopper at least half full, crank
/// rhythm and pace as in the plot. Seed lost outside the swath is counted as if it fell inside.</remarks>
public sealed partial class MeasuredRate
{
    /// <summary>Rate of a weighed run: what left the hopper over a taped course.</summary>
    /// <param name="used">Weight before less weight after; above 0.</param>
    /// <param name="distance">Course length; above 0.</param>
    /// <param name="swath">Effective swath, or the hopper width of a drop spreader; above 0.</param>
    /// <param name="errors">Measuring errors; null counts every measurement as exact.</param>
    /// <param name="time">Time of the run, when it was taken: it gives the flow.</param>
    /// <returns>The rate with its error.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>R = lb x 43,560 / (S x D). Source: SPREAD-S3; drop spreader swath = hopper width: SPREAD-S20B.</remarks>
    public static MeasuredRate WeighedRun(
        Mass used,
        Length distance,
        Length swath,
        MeasuringErrors? errors = null,
        TimeSpan? time = null
    ) => OverCourse(CalibrationMethod.WeighedRun, used, distance, swath, errors, time);

    /// <summary>Rate of a run-out: a weighed load walked until the hopper is empty.</summary>
    /// <param name="loaded">Weight loaded; above 0.</param>
    /// <param name="distance">Distance walked until empty; above 0.</param>
    /// <param name="swath">Effective swath; above 0.</param>
    /// <param name="errors">Measuring errors; null counts every measurement as exact.</param>
    /// <param name="time">Time of the run, when it was taken: it gives the flow.</param>
    /// <returns>The rate with its error.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>R = lb x 43,560 / (S x D). Source: SPREAD-S3. The last of the seed leaves unevenly: the end of a run-out is
    /// a little thin.</remarks>
    public static MeasuredRate RunOut(
        Mass loaded,
        Length distance,
        Length swath,
        MeasuringErrors? errors = null,
        TimeSpan? time = null
    ) => OverCourse(CalibrationMethod.RunOut, loaded, distance, swath, errors, time);

    /// <summary>Rate of a timed catch at working rhythm.</summary>
    /// <param name="caught">Weight caught; above 0.</param>
    /// <param name="time">Time of the catch; above 0.</param>
    /// <param name="speed">Ground speed in the plot; above 0.</param>
    /// <param name="swath">Effective swath; above 0.</param>
    /// <param name="errors">Measuring errors; null counts every measurement as exact.</param>
    /// <returns>The rate with its flow and error.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>F = weight / time; R = 495 F / (v S). Not valid for a machine metered by its ground wheel unless it is turned at
    /// field speed.</remarks>
    public static MeasuredRate TimedCatch(Mass caught, TimeSpan time, Speed speed, Length swath, MeasuringErrors? errors = null)
    {
        double pounds = caught.Pounds;
        double seconds = time.TotalSeconds;
        double poundsPerMinute = SpreaderMath.PoundsPerMinuteCaught(
            Guard.Above(pounds, 0, "lb", nameof(caught)),
            Guard.Above(seconds, 0, "s", nameof(time))
        );
        var setting = SpreaderSetting.FromFlow(MassFlow.FromPoundsPerMinute(poundsPerMinute), speed, swath);
        return new()
        {
            Method = CalibrationMethod.TimedCatch,
            Rate = setting.Rate,
            Weighed = caught,
            Flow = setting.Flow,
            Error = RateErrorBudget.ForTimedCatch(setting, errors ?? MeasuringErrors.None, caught, time),
            Lines = () =>
                [
                    SpreadingFormulas
                        .All["spread-flow-of-catch"]
                        .Line(
                            $"{Amounts.Print(poundsPerMinute, 4)} lb/min",
                            ("weight", Amounts.Print(pounds, 4)),
                            ("seconds", Amounts.Print(seconds, 2))
                        ),
                    .. setting.ShowWork(),
                ],
        };
    }

    private static MeasuredRate OverCourse(
        CalibrationMethod method,
        Mass weighed,
        Length distance,
        Length swath,
        MeasuringErrors? errors,
        TimeSpan? time
    )
    {
        double pounds = weighed.Pounds;
        double courseFeet = distance.Feet;
        double swathFeet = swath.Feet;
        double squareFeet = Guard.Above(courseFeet, 0, "ft", nameof(distance)) * Guard.Above(swathFeet, 0, "ft", nameof(swath));
        double rate = SpreaderMath.PoundsPerAcreOverArea(Guard.Above(pounds, 0, "lb", nameof(weighed)), squareFeet);
        double? seconds = time is { } taken ? Guard.Above(taken.TotalSeconds, 0, "s", nameof(time)) : null;
        var pace = seconds is { } timed
            ? RateErrorBudget.Pace(errors ?? MeasuringErrors.None, SpreaderMath.MilesPerHour(courseFeet, timed))
            : ("pace", 0);
        return new()
        {
            Method = method,
            Rate = ApplicationRate.FromPoundsPerAcre(rate),
            Weighed = weighed,
            Covered = Area.FromSquareFeet(squareFeet),
            Flow = seconds is { } spell ? MassFlow.FromPoundsPerMinute(SpreaderMath.PoundsPerMinuteCaught(pounds, spell)) : null,
            Error = RateErrorBudget.Of(
                RateErrorBudget.Weight(errors ?? MeasuringErrors.None, pounds),
                RateErrorBudget.Distance(errors ?? MeasuringErrors.None, courseFeet),
                pace,
                RateErrorBudget.Swath(errors ?? MeasuringErrors.None, swathFeet)
            ),
            Lines = () =>
                [
                    RateLine(
                        "spread-rate-over-course",
                        pounds,
                        rate,
                        ("swath", Amounts.Print(swathFeet, 3)),
                        ("distance", Amounts.Print(courseFeet, 3))
                    ),
                ],
        };
    }

    private static WorkedLine RateLine(
        string formula,
        double pounds,
        double rate,
        params ReadOnlySpan<(string Place, string Value)> ground
    ) =>
        SpreadingFormulas
            .All[formula]
            .Line(
                $"{Amounts.Print(rate, 3)} lb/ac",
                [("weight", Amounts.Print(pounds, 4)), FormulaTable.SquareFeetPerAcre, .. ground]
            );
}
