using System.Runtime.CompilerServices;
using MathNet.Numerics;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>The sums of seeds, in doubles. Fractions are parts of one.</summary>
internal static class SeedMath
{
    internal const double MilligramsPerPound = 1000 * ExactUnits.GramsPerPound;
    internal const double InchesPerFoot = 12;

    /// <summary>95 % of a normal distribution lies within this many standard deviations of its middle.</summary>
    internal const double NormalNinetyFive = 1.96;

    private const double TailOutside95 = 0.025;

    /// <summary>Where the search for a quantile ends: near the last digit of a double.</summary>
    private const double NarrowestQuantile = 1e-15;

    /// <summary>Part of the pure seeds that counts as alive, at most the whole.</summary>
    internal static double ViableFraction(
        double germination,
        double hard,
        double dormant,
        double hardCredit,
        double dormantCredit
    ) => ViableFraction<OneLane>(new(germination), new(hard), new(dormant), hardCredit, dormantCredit).Value;

    /// <inheritdoc cref="ViableFraction(double, double, double, double, double)"/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T ViableFraction<T>(T germination, T hard, T dormant, double hardCredit, double dormantCredit)
        where T : unmanaged, ILanes<T> =>
        T.Least(T.Of(1), germination + (T.Of(hardCredit) * hard) + (T.Of(dormantCredit) * dormant));

    internal static double PureLiveFraction(double pureFraction, double viableFraction) =>
        PureLiveFraction<OneLane>(new(pureFraction), new(viableFraction)).Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T PureLiveFraction<T>(T pureFraction, T viableFraction)
        where T : unmanaged, ILanes<T> => pureFraction * viableFraction;

    internal static double BulkPoundsPerAcre(double livePoundsPerAcre, double pureLiveFraction) =>
        BulkPoundsPerAcre<OneLane>(new(livePoundsPerAcre), new(pureLiveFraction)).Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T BulkPoundsPerAcre<T>(T livePoundsPerAcre, T pureLiveFraction)
        where T : unmanaged, ILanes<T> => livePoundsPerAcre / pureLiveFraction;

    internal static double SizeRatio(double largest, double smallest) => largest / smallest;

    internal static decimal PricePerLivingPound(decimal pricePerPound, double pureLiveFraction) =>
        pricePerPound / (decimal)pureLiveFraction;

    internal static decimal CostPerAcre(double bulkPoundsPerAcre, decimal pricePerPound) =>
        pricePerPound * (decimal)bulkPoundsPerAcre;

    /// <summary>Inoculant or sticker for a weight of seed.</summary>
    internal static double OuncesOnSeed(double ouncesPerPound, double seedPounds) => seedPounds * ouncesPerPound;

    /// <summary>What to multiply the rate by when a test at home replaces the tag.</summary>
    internal static double RateFactorOfHomeTest(double tag, double home, double most) => Math.Min(tag / home, most);

    internal static double MeanOfTests(double labelPercent, double retestPercent) => (labelPercent + retestPercent) / 2;

    internal static double DifferenceOfTests(double labelPercent, double retestPercent) => Math.Abs(labelPercent - retestPercent);

    internal static double SeedsPerSquareFoot(double poundsPerAcre, double seedsPerPound) =>
        SeedsPerSquareFoot<OneLane>(new(poundsPerAcre), new(seedsPerPound)).Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T SeedsPerSquareFoot<T>(T poundsPerAcre, T seedsPerPound)
        where T : unmanaged, ILanes<T> => poundsPerAcre * seedsPerPound / T.Of(ExactUnits.SquareFeetPerAcre);

    internal static double PoundsPerAcreForDensity(double seedsPerSquareFoot, double seedsPerPound) =>
        seedsPerSquareFoot * ExactUnits.SquareFeetPerAcre / seedsPerPound;

    internal static double PoundsPerAcreForStand(double plantsPerAcre, double keptFraction, double seedsPerPound) =>
        plantsPerAcre / keptFraction / seedsPerPound;

    internal static double PlantsPerSquareFoot(double liveSeedsPerSquareFoot, double emerging, double surviving) =>
        liveSeedsPerSquareFoot * emerging * surviving;

    internal static double SeedsPerRowFoot(double seedsPerAcre, double rowSpacingInches) =>
        seedsPerAcre / ExactUnits.SquareFeetPerAcre * rowSpacingInches / InchesPerFoot;

    internal static double SeedsPerAcreFromRow(double seedsPerRowFoot, double rowSpacingInches) =>
        ExactUnits.SquareFeetPerAcre * InchesPerFoot / rowSpacingInches * seedsPerRowFoot;

    /// <summary>Rule of 100: temperature and relative humidity added up.</summary>
    internal static double HundredSum(double fahrenheit, double relativeHumidityPercent) => fahrenheit + relativeHumidityPercent;

    /// <summary>Halves rule: each point of moisture less and each step of temperature less doubles the life.</summary>
    internal static double LifeFactor(double pointsDrier, double fahrenheitCooler, double fahrenheitPerHalving) =>
        Math.Pow(2, pointsDrier) * Math.Pow(2, fahrenheitCooler / fahrenheitPerHalving);

    internal static double StandardError(double fraction, double seeds) => Math.Sqrt(fraction * (1 - fraction) / seeds);

    /// <summary>Wilson's 95 % range.</summary>
    internal static (double Low, double High) Wilson(double fraction, double seeds)
    {
        double z2 = NormalNinetyFive * NormalNinetyFive;
        double centre = (fraction + z2 / (2 * seeds)) / (1 + z2 / seeds);
        double half =
            NormalNinetyFive * Math.Sqrt(fraction * (1 - fraction) / seeds + z2 / (4 * seeds * seeds)) / (1 + z2 / seeds);
        return (fraction <= 0 ? 0 : centre - half, fraction >= 1 ? 1 : centre + half);
    }

    /// <summary>Exact (Clopper-Pearson) 95 % range: the beta quantiles of the two tails.</summary>
    internal static (double Low, double High) Exact(double germinated, double seeds) =>
        (
            germinated <= 0 ? 0 : BetaQuantile(germinated, seeds - germinated + 1, TailOutside95),
            germinated >= seeds ? 1 : BetaQuantile(germinated + 1, seeds - germinated, 1 - TailOutside95)
        );

    private static double BetaQuantile(double a, double b, double probability)
    {
        double low = 0,
            high = 1;
        while (high - low > NarrowestQuantile)
        {
            double middle = (low + high) / 2;
            (low, high) = SpecialFunctions.BetaRegularized(a, b, middle) < probability ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    /// <summary>Full broadcast rate where too few publications print one: the lowest, but no less than the drilled full rate, and
    /// no more than the highest.</summary>
    internal static double RaisedPoundsPerAcre(double lowest, double highest, double drilled) =>
        Math.Min(highest, Math.Max(lowest, drilled));
}
