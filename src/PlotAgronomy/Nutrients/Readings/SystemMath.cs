using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>The equations of the systems, in plain numbers. Rates are lb of oxide per acre and year.</summary>
internal static class SystemMath
{
    /// <summary>Raw value of a x I^2 - b x I + c.</summary>
    internal static double Parabola(double index, double a, double b, double c) => (a * index * index) - (b * index) + c;

    /// <summary>Index at which the parabola first reaches zero; infinity when it never does.</summary>
    internal static double FirstZero(double a, double b, double c)
    {
        double discriminant = (b * b) - (4 * a * c);
        return discriminant < 0 ? double.PositiveInfinity : 2 * c / (b + Math.Sqrt(discriminant));
    }

    /// <summary>The parabola as advice: zero at and beyond its first zero, where the printed equation turns up again,
    /// and above the limit of an equation that never reaches zero.</summary>
    internal static double FallingParabola(
        double index,
        double a,
        double b,
        double c,
        double firstZero,
        double zeroAboveIndex
    ) => Step.Below(index, firstZero, Step.UpTo(index, zeroAboveIndex, Math.Max(0, Parabola(index, a, b, c))));

    /// <summary>(critical - test) x factor below the critical level, else 0.</summary>
    internal static double LinearBuildUp(double test, double criticalLevel, double poundsPerUnit) =>
        Math.Max(0, criticalLevel - test) * poundsPerUnit;

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
    internal static double ByExchangeCapacity(double atZero, double perUnit, double cec) => atZero + (perUnit * cec);

    /// <summary>Tri-State potash: the pounds for each ppm below the critical level grow with the exchange capacity.</summary>
    internal static double TriStatePotashBuildUp(double test, double criticalLevel, double atZero, double perUnit, double cec) =>
        LinearBuildUp(test, criticalLevel, ByExchangeCapacity(atZero, perUnit, cec));

    /// <summary>Tri-State 1995: removal, for potash with an extra, as far as a share of it is still due.</summary>
    internal static double TriState1995Replacement(double removed, double extra, double shareDue) => (removed + extra) * shareDue;

    /// <summary>Tri-State 2020: removal, for potash with an extra, below the limit.</summary>
    internal static double TriState2020Replacement(double test, double limit, double removed, double extra) =>
        Step.Below(test, limit, removed + extra);

    /// <summary>Tri-State 2020, potash of alfalfa: from the critical level on less than removal, none at the limit.</summary>
    internal static double TriState2020Taper(double test, double critical, double limit, double removed, double extra) =>
        Step.Below(test, limit, (removed + extra) * Math.Min(1, (limit - test) / (limit - critical)));

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
    internal static double YearlyRate(double buildUp, double replaced, double cap) => Math.Min(buildUp + replaced, cap);

    /// <summary>Connecticut: banded phosphate that does the work of a broadcast rate.</summary>
    internal static double ConnecticutBanded(double broadcast, double worthOfBanded) => broadcast / worthOfBanded;

    /// <summary>Less of a printed rate, as a note to it says.</summary>
    internal static double Less(double printed, double cut) => printed - cut;

    /// <summary>So many pounds for each unit of yield.</summary>
    internal static double ByYield(double perUnit, double yield) => yield * perUnit;
}
