using System.Runtime.CompilerServices;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>Kernels of the spreader sums: doubles in the units of their names. The constants are exact.</summary>
internal static class SpreaderMath
{
    internal const double FeetPerMinutePerMph = 88;

    /// <summary>495 = 43,560 ft2/ac over 88 ft/min per mph.</summary>
    internal const double FlowConstant = ExactUnits.SquareFeetPerAcre / FeetPerMinutePerMph;

    internal static double PoundsPerAcre(double poundsPerMinute, double milesPerHour, double swathFeet) =>
        PoundsPerAcre<OneLane>(new(poundsPerMinute), new(milesPerHour), new(swathFeet)).Value;

    /// <summary>The same of several runs at once.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T PoundsPerAcre<T>(T poundsPerMinute, T milesPerHour, T swathFeet)
        where T : unmanaged, ILanes<T> => poundsPerMinute * T.Of(FlowConstant) / (milesPerHour * swathFeet);

    internal static double PoundsPerMinute(double poundsPerAcre, double milesPerHour, double swathFeet) =>
        poundsPerAcre * milesPerHour * swathFeet / FlowConstant;

    internal static double MilesPerHour(double poundsPerAcre, double poundsPerMinute, double swathFeet) =>
        poundsPerMinute * FlowConstant / (poundsPerAcre * swathFeet);

    internal static double SwathFeet(double poundsPerAcre, double poundsPerMinute, double milesPerHour) =>
        poundsPerMinute * FlowConstant / (poundsPerAcre * milesPerHour);

    internal static double PoundsPerAcreOverArea(double pounds, double squareFeet) =>
        pounds * ExactUnits.SquareFeetPerAcre / squareFeet;

    internal static double PoundsPerAcreSown(double pounds, double acres) => pounds / acres;

    internal static double PoundsLeft(double load, double partSown) => load * (1 - partSown);

    internal static double SecondsForTheRest(double seconds, double neededPoundsPerAcre, double poundsPerAcreSoFar) =>
        seconds * (neededPoundsPerAcre / poundsPerAcreSoFar);

    internal static double PoundsOverArea(double poundsPerAcre, double squareFeet) =>
        poundsPerAcre * squareFeet / ExactUnits.SquareFeetPerAcre;

    internal static double AcresCovered(double plotAcres, double partBeside) => plotAcres * (1 + partBeside);

    internal static double PoundsPerMinuteCaught(double pounds, double seconds) => pounds / seconds * 60;

    internal static double PartLeft(double left, double whole) => left / whole;

    internal static double MinutesToFlow(double pounds, double poundsPerMinute) => pounds / poundsPerMinute;

    internal static double SquareFeetOfWheel(double rows, double rowFeet, double circumferenceFeet, double turns) =>
        rows * rowFeet * (turns * circumferenceFeet);

    internal static double PoundsPerAcreByWheel(double pounds, double squareFeet, double skid) =>
        PoundsPerAcreOverArea(pounds, squareFeet) * (1 - skid);

    internal static double PoundsPerAcreAtSpacing(double poundsPerAcre, double calibratedFeet, double spacingFeet) =>
        poundsPerAcre * calibratedFeet / spacingFeet;

    internal static double PoundsPerAcreAtSpeed(double poundsPerAcre, double plannedMilesPerHour, double keptMilesPerHour) =>
        poundsPerAcre * plannedMilesPerHour / keptMilesPerHour;

    internal static double PoundsToAimFor(double meanPounds, double wantedPoundsPerAcre, double meanPoundsPerAcre) =>
        meanPounds * (wantedPoundsPerAcre / meanPoundsPerAcre);

    internal static double FeetToWalk(double squareFeet, double swathFeet) => squareFeet / swathFeet;

    internal static double SpacingFeet(double widthFeet, double strips) => widthFeet / strips;

    internal static double SwathsAcross(double widthFeet, double swathFeet) => widthFeet / swathFeet;

    internal static double SpacingOnEdgeFeet(double widthFeet, double strips) => widthFeet / (strips - 1);

    internal static double PathFeet(double lapFeet, double passesFeet, double walkFeet) => lapFeet + passesFeet + walkFeet;

    internal static double ThrownSquareFeet(double lengthFeet, double spacingFeet) => lengthFeet * spacingFeet;

    internal static double PoundsThrown(double poundsPerAcre, double lengthFeet, double spacingFeet, double otherSquareFeet) =>
        PoundsOverArea(poundsPerAcre, ThrownSquareFeet(lengthFeet, spacingFeet) + otherSquareFeet);

    internal static double SecondsForFeet(double feet, double milesPerHour) => feet / (FeetPerMinutePerMph * milesPerHour) * 60;

    internal static double MilesPerHour(double feet, double seconds) => feet / seconds * 60 / FeetPerMinutePerMph;

    internal static double AcresPerMinute(double milesPerHour, double swathFeet) => milesPerHour * swathFeet / FlowConstant;

    /// <summary>The law of seeds through a hole in a flat bottom; nothing flows until the hole is wider than the empty
    /// rim.</summary>
    internal static double GramsPerMinute(
        double holeCentimeters,
        double seedCentimeters,
        double gramsPerCubicCentimeter,
        double factor,
        double emptyRim,
        double gravity,
        double power
    )
    {
        double free = holeCentimeters - (emptyRim * seedCentimeters);
        return free <= 0 ? 0 : factor * gramsPerCubicCentimeter * Math.Sqrt(gravity) * Math.Pow(free, power);
    }

    /// <summary>The hole that lets a flow through.</summary>
    internal static double HoleCentimeters(
        double gramsPerMinute,
        double seedCentimeters,
        double gramsPerCubicCentimeter,
        double factor,
        double emptyRim,
        double gravity,
        double power
    ) =>
        (emptyRim * seedCentimeters)
        + Math.Pow(gramsPerMinute / (factor * gramsPerCubicCentimeter * Math.Sqrt(gravity)), 1 / power);

    internal static double Mean(double sum, double count) => sum / count;

    /// <summary>How far apart the runs are, as a part of their mean.</summary>
    internal static double RelativeSpread(double highest, double lowest, double mean) => (highest - lowest) / mean;

    /// <summary>How far a value is off another, as a part of that other.</summary>
    internal static double RelativeOff(double value, double reference) => (value / reference) - 1;

    internal static double Ratio(double value, double reference) => value / reference;

    /// <summary>Errors that have nothing to do with one another add as squares.</summary>
    internal static double SumOfSquares(params ReadOnlySpan<double> terms)
    {
        double sum = 0;
        foreach (double term in terms)
        {
            sum += term * term;
        }

        return sum;
    }

    internal static double Root(double sumOfSquares) => Math.Sqrt(sumOfSquares);
}
