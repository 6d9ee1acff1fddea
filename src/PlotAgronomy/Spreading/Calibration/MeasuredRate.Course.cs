using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <content>Course lengths and expected weights for a calibration.</content>
public sealed partial class MeasuredRate
{
    /// <summary>The course of a test run when nobody chose another.</summary>
    internal static Length UsualCourse => Length.FromFeet(SpreadingConstants.All["test-run"]);

    /// <summary>Length that covers an area at a swath.</summary>
    /// <param name="area">Ground to cover, such as 1/32 acre; above 0.</param>
    /// <param name="swath">Effective swath, row or hopper width; above 0.</param>
    /// <returns>The length.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static Length CourseLengthFor(Area area, Length swath)
    {
        double squareFeet = area.SquareFeet;
        double feet = swath.Feet;
        return Length.FromFeet(
            SpreaderMath.FeetToWalk(Guard.Above(squareFeet, 0, "ft2", nameof(area)), Guard.Above(feet, 0, "ft", nameof(swath)))
        );
    }

    /// <summary>Ground that a course covers.</summary>
    /// <param name="distance">Course length; above 0.</param>
    /// <param name="swath">Effective swath, row or hopper width; above 0.</param>
    /// <returns>The area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static Area CourseAreaOf(Length distance, Length swath)
    {
        double length = distance.Feet;
        double feet = swath.Feet;
        return Area.FromSquareFeet(Guard.Above(length, 0, "ft", nameof(distance)) * Guard.Above(feet, 0, "ft", nameof(swath)));
    }

    /// <summary>Weight that should leave the hopper, or one row, over a course.</summary>
    /// <param name="rate">Rate wanted; at least 0.</param>
    /// <param name="distance">Course length; above 0.</param>
    /// <param name="swath">Effective swath, row or hopper width; above 0.</param>
    /// <returns>The weight.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static Mass ExpectedCatch(ApplicationRate rate, Length distance, Length swath) =>
        rate.Over(CourseAreaOf(distance, swath));

    internal static WorkedLine ExpectedCatchLine(ApplicationRate rate, Length distance, Length swath) =>
        SpreadingFormulas
            .All["spread-test-run"]
            .Line(
                Amounts.Print(ExpectedCatch(rate, distance, swath), "lb", 3),
                ("rate", $"{Amounts.Print(rate.PoundsPerAcre, 2)} lb/ac"),
                ("course", Amounts.Print(distance, "ft", 1)),
                ("swath", Amounts.Print(swath, "ft", 1)),
                FormulaTable.SquareFeetPerAcre
            );

    /// <summary>Length that a wheel rolls in one turn.</summary>
    /// <param name="wheelDiameter">Wheel diameter; above 0.</param>
    /// <returns>The length, without slip.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    /// <remarks>feet per turn = pi x diameter. A band of rows or a drop spreader sows this length times its width.</remarks>
    public static Length FeetPerWheelTurn(Length wheelDiameter)
    {
        double diameter = wheelDiameter.Feet;
        return Length.FromFeet(Math.PI * Guard.Above(diameter, 0, "ft", nameof(wheelDiameter)));
    }

    /// <summary>Feet of row on an area: what is drilled, or banded along the rows.</summary>
    /// <param name="area">Ground; above 0.</param>
    /// <param name="rowSpacing">Distance of the rows; above 0.</param>
    /// <returns>The length of all rows.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>feet of row = area / row spacing; 29,040 ft on an acre of 18 in rows.</remarks>
    public static Length RowLengthOn(Area area, Length rowSpacing)
    {
        double feet = rowSpacing.Feet;
        Guard.Above(feet, 0, "ft", nameof(rowSpacing));
        return CourseLengthFor(area, rowSpacing);
    }

    /// <summary>Turns of a wheel over a course.</summary>
    /// <param name="distance">Course length; above 0.</param>
    /// <param name="wheelDiameter">Wheel diameter; above 0.</param>
    /// <returns>Turns, unrounded.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>turns = course / (pi x diameter). Source: SPREAD-S10B. A sinking tyre rolls shorter: count turns in the
    /// field.</remarks>
    public static double WheelTurnsFor(Length distance, Length wheelDiameter)
    {
        double feet = distance.Feet;
        double diameter = wheelDiameter.Feet;
        return Guard.Above(feet, 0, "ft", nameof(distance)) / (Math.PI * Guard.Above(diameter, 0, "ft", nameof(wheelDiameter)));
    }
}
