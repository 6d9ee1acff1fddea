using System.Runtime.Intrinsics;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>The equations of the systems, in plain numbers. Rates are lb of oxide per acre and year.</summary>
internal static class SystemMath
{
    /// <summary>Raw value of a x I^2 - b x I + c.</summary>
    internal static Vector256<double> Parabola(
        Vector256<double> index,
        Vector256<double> a,
        Vector256<double> b,
        Vector256<double> c
    ) => (a * index * index) - (b * index) + c;

    internal static double Parabola(double index, double a, double b, double c) =>
        Parabola(Alike(index), Alike(a), Alike(b), Alike(c)).ToScalar();

    /// <summary>Index at which the parabola first reaches zero; infinity when it never does.</summary>
    internal static double FirstZero(double a, double b, double c)
    {
        double discriminant = (b * b) - (4 * a * c);
        return discriminant < 0 ? double.PositiveInfinity : 2 * c / (b + Math.Sqrt(discriminant));
    }

    /// <summary>The parabola as advice: zero at and beyond its first zero, where the printed equation turns up again,
    /// and above the limit of an equation that never reaches zero.</summary>
    internal static Vector256<double> FallingParabola(
        Vector256<double> index,
        Vector256<double> a,
        Vector256<double> b,
        Vector256<double> c,
        Vector256<double> firstZero,
        Vector256<double> zeroAboveIndex
    ) =>
        Step.Below(
            index,
            firstZero,
            Step.UpTo(index, zeroAboveIndex, Vector256.Max(Vector256<double>.Zero, Parabola(index, a, b, c)))
        );

    internal static double FallingParabola(
        double index,
        double a,
        double b,
        double c,
        double firstZero,
        double zeroAboveIndex
    ) => FallingParabola(Alike(index), Alike(a), Alike(b), Alike(c), Alike(firstZero), Alike(zeroAboveIndex)).ToScalar();

    /// <summary>(critical - test) x factor below the critical level, else 0.</summary>
    internal static Vector256<double> LinearBuildUp(
        Vector256<double> test,
        Vector256<double> criticalLevel,
        Vector256<double> poundsPerUnit
    ) => Vector256.Max(Vector256<double>.Zero, criticalLevel - test) * poundsPerUnit;

    internal static double LinearBuildUp(double test, double criticalLevel, double poundsPerUnit) =>
        LinearBuildUp(Alike(test), Alike(criticalLevel), Alike(poundsPerUnit)).ToScalar();

    /// <summary>factor x (sqrt(target) - sqrt(test)) / years below the target, else 0.</summary>
    internal static double SquareRootBuildUp(double test, double target, double factor, double years) =>
        Math.Max(0, factor * (Math.Sqrt(target) - Math.Sqrt(test)) / years);

    /// <summary>Share of the replacement still advised between the end of maintenance and the end of the taper: 1 to 0.</summary>
    internal static double TaperShare(double test, double taperStart, double taperEnd) =>
        Math.Clamp(Interpolation.Line(taperStart, 1, taperEnd, 0, test), 0, 1);

    /// <summary>constant + perYield x yield + perTest x test + perBoth x yield x test, unclamped.</summary>
    internal static double Linear(double constant, double perYield, double perTest, double perBoth, double yield, double test) =>
        constant + (perYield * yield) + (perTest * test) + (perBoth * yield * test);

    /// <summary>Nearest multiple of a step, a half away from zero: the rounding of printed tables.</summary>
    internal static double ToNearest(double value, double step) => Math.Round(value / step, MidpointRounding.AwayFromZero) * step;

    /// <summary>constant + per unit x test - per pH x pH.</summary>
    internal static double ManganeseIndex(double constant, double perUnit, double test, double perPh, double waterPh) =>
        constant + (perUnit * test) - (perPh * waterPh);

    /// <summary>A level or factor that grows with the exchange capacity.</summary>
    internal static Vector256<double> ByExchangeCapacity(
        Vector256<double> atZero,
        Vector256<double> perUnit,
        Vector256<double> cec
    ) => atZero + (perUnit * cec);

    internal static double ByExchangeCapacity(double atZero, double perUnit, double cec) =>
        ByExchangeCapacity(Alike(atZero), Alike(perUnit), Alike(cec)).ToScalar();

    /// <summary>Tri-State potash: the pounds for each ppm below the critical level grow with the exchange capacity.</summary>
    internal static Vector256<double> TriStatePotashBuildUp(
        Vector256<double> test,
        Vector256<double> criticalLevel,
        Vector256<double> atZero,
        Vector256<double> perUnit,
        Vector256<double> cec
    ) => LinearBuildUp(test, criticalLevel, ByExchangeCapacity(atZero, perUnit, cec));

    internal static double TriStatePotashBuildUp(double test, double criticalLevel, double atZero, double perUnit, double cec) =>
        TriStatePotashBuildUp(Alike(test), Alike(criticalLevel), Alike(atZero), Alike(perUnit), Alike(cec)).ToScalar();

    /// <summary>Tri-State 1995: removal, for potash with an extra, as far as a share of it is still due.</summary>
    internal static double TriState1995Replacement(double removed, double extra, double shareDue) => (removed + extra) * shareDue;

    /// <summary>Tri-State 2020: removal, for potash with an extra, below the limit.</summary>
    internal static Vector256<double> TriState2020Replacement(
        Vector256<double> test,
        Vector256<double> limit,
        Vector256<double> removed,
        Vector256<double> extra
    ) => Step.Below(test, limit, removed + extra);

    internal static double TriState2020Replacement(double test, double limit, double removed, double extra) =>
        TriState2020Replacement(Alike(test), Alike(limit), Alike(removed), Alike(extra)).ToScalar();

    /// <summary>Tri-State 2020, potash of alfalfa: from the critical level on less than removal, none at the limit.</summary>
    internal static Vector256<double> TriState2020Taper(
        Vector256<double> test,
        Vector256<double> critical,
        Vector256<double> limit,
        Vector256<double> removed,
        Vector256<double> extra
    ) =>
        Step.Below(
            test,
            limit,
            (removed + extra) * Vector256.Min(Vector256<double>.One, (limit - test) / (limit - critical))
        );

    internal static double TriState2020Taper(double test, double critical, double limit, double removed, double extra) =>
        TriState2020Taper(Alike(test), Alike(critical), Alike(limit), Alike(removed), Alike(extra)).ToScalar();

    /// <summary>Illinois: fixed pounds for each pound of test below the goal, spread over years.</summary>
    internal static double IllinoisBuildUp(double test, double goal, double perPoundOfTest, double years) =>
        LinearBuildUp(test, goal, perPoundOfTest / years);

    /// <summary>Illinois: removal times a factor as far as the limit.</summary>
    internal static double IllinoisReplacement(double test, double limit, double removed, double times) =>
        Step.UpTo(test, limit, removed * times);

    /// <summary>South Carolina: the printed potash less the share that the subsoil holds.</summary>
    internal static double SouthCarolinaPotash(double printed, double shareOfSubsoil) => printed * (1 - shareOfSubsoil);

    /// <summary>A linear equation as advice below its limit: never below the least rate, nor below zero.</summary>
    internal static double LinearAdvice(
        double leastRate,
        double constant,
        double perYield,
        double perTest,
        double perBoth,
        double yield,
        double test
    ) => Math.Max(leastRate, Math.Max(0, Linear(constant, perYield, perTest, perBoth, yield, test)));

    /// <summary>Build-up and replacement of one year, cut at a yearly cap.</summary>
    internal static Vector256<double> YearlyRate(Vector256<double> buildUp, Vector256<double> replaced, Vector256<double> cap) =>
        Vector256.Min(buildUp + replaced, cap);

    internal static double YearlyRate(double buildUp, double replaced, double cap) =>
        YearlyRate(Alike(buildUp), Alike(replaced), Alike(cap)).ToScalar();

    /// <summary>Connecticut: banded phosphate that does the work of a broadcast rate.</summary>
    internal static double ConnecticutBanded(double broadcast, double worthOfBanded) => broadcast / worthOfBanded;

    /// <summary>Less of a printed rate, as a note to it says.</summary>
    internal static double Less(double printed, double cut) => printed - cut;

    /// <summary>So many pounds for each unit of yield.</summary>
    internal static double ByYield(double perUnit, double yield) => yield * perUnit;

    /// <summary>One number in all four places: one soil is summed as four alike.</summary>
    private static Vector256<double> Alike(double value) => Vector256.Create(value);
}
