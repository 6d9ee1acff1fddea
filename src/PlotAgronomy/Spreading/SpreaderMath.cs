namespace PlotAgronomy.Spreading;

/// <summary>Kernels of the spreader sums: doubles in the units of their names. The constants are exact.</summary>
internal static class SpreaderMath
{
    internal const double FeetPerMinutePerMph = 88;

    /// <summary>495 = 43,560 ft2/ac over 88 ft/min per mph.</summary>
    internal const double FlowConstant = ExactUnits.SquareFeetPerAcre / FeetPerMinutePerMph;

    internal static double PoundsPerAcre(double poundsPerMinute, double milesPerHour, double swathFeet) =>
        poundsPerMinute * FlowConstant / (milesPerHour * swathFeet);

    internal static double PoundsPerMinute(double poundsPerAcre, double milesPerHour, double swathFeet) =>
        poundsPerAcre * milesPerHour * swathFeet / FlowConstant;

    internal static double MilesPerHour(double poundsPerAcre, double poundsPerMinute, double swathFeet) =>
        poundsPerMinute * FlowConstant / (poundsPerAcre * swathFeet);

    internal static double SwathFeet(double poundsPerAcre, double poundsPerMinute, double milesPerHour) =>
        poundsPerMinute * FlowConstant / (poundsPerAcre * milesPerHour);

    internal static double PoundsPerAcreOverArea(double pounds, double squareFeet) =>
        pounds * ExactUnits.SquareFeetPerAcre / squareFeet;

    internal static double SecondsForFeet(double feet, double milesPerHour) => feet / (FeetPerMinutePerMph * milesPerHour) * 60;

    internal static double MilesPerHour(double feet, double seconds) => feet / seconds * 60 / FeetPerMinutePerMph;

    internal static double AcresPerMinute(double milesPerHour, double swathFeet) => milesPerHour * swathFeet / FlowConstant;

    internal static double RootSumOfSquares(IEnumerable<double> terms) => Math.Sqrt(terms.Sum(t => t * t));
}
