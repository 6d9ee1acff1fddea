using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>The sums of a blend, in doubles; those of one kind are in <see cref="Seeds.SeedMath"/>. Rates are of live
/// seed.</summary>
internal static class BlendMath
{
    internal static double ShareOfFullStand(double livePoundsPerAcre, double fullLivePoundsPerAcre) =>
        livePoundsPerAcre / fullLivePoundsPerAcre;

    internal static double LivePoundsPerAcre(double shareOfFullStand, double fullLivePoundsPerAcre) =>
        shareOfFullStand * fullLivePoundsPerAcre;

    internal static double LiveSeedsIn(double pounds, double shareOfWeight, double pureLiveFraction, double seedsPerPound) =>
        pounds * shareOfWeight * pureLiveFraction * seedsPerPound;

    /// <summary>How far a count scattered at random may be from what is expected, as a part of it.</summary>
    internal static double RangeOfCount(double standardDeviations, double expectedCount) =>
        standardDeviations * RandomVariation(expectedCount);

    internal static double AcresCovered(double claimedAcres, double fullStands) => claimedAcres * fullStands;

    internal static double BagsExactly(double acres, double acresCovered) => acres / acresCovered;

    internal static decimal CostPerAcre(decimal price, double acresCovered) => price / (decimal)acresCovered;

    internal static decimal Cost(decimal pricePerPound, double pounds) => pricePerPound * (decimal)pounds;

    internal static double OfLot(double partOfLivingSeed, double aloneTaken) => partOfLivingSeed * aloneTaken;

    internal static double ShareOfWhole(double part, double sum) => part / sum;

    /// <summary>Shannon's diversity H, the sum of its terms.</summary>
    internal static double Shannon(ReadOnlySpan<double> shares)
    {
        double sum = 0;
        foreach (double q in shares)
        {
            sum += ShannonTerm(q);
        }

        return Math.Max(0, sum);
    }

    /// <summary>-q ln q; an empty share adds nothing.</summary>
    internal static double ShannonTerm(double share) => share > 0 ? -(share * Math.Log(share)) : 0;

    /// <summary>J = H / ln N; 1 for a single kind, by definition.</summary>
    internal static double Evenness(double shannon, double kinds) => kinds <= 1 ? 1 : shannon / Math.Log(kinds);

    /// <summary>exp(H): equal kinds that would be as diverse.</summary>
    internal static double EffectiveKinds(double shannon) => Math.Exp(shannon);

    /// <summary>1 - D, where D is the sum of its terms.</summary>
    internal static double Simpson(ReadOnlySpan<double> shares)
    {
        double sum = 0;
        foreach (double q in shares)
        {
            sum += SimpsonTerm(q);
        }

        return 1 - sum;
    }

    /// <summary>q squared: the chance that two picks are both of this kind.</summary>
    internal static double SimpsonTerm(double share) => share * share;

    /// <summary>Coefficient of variation of a count that is scattered at random: 1 / sqrt(count).</summary>
    internal static double RandomVariation(double expectedCount) => 1 / Math.Sqrt(expectedCount);

    /// <summary>Nitrogen a legume fixes at a share of a full stand: straight lines through nothing at 0, the low figure at
    /// a quarter stand and the high figure at a full one; a share above 1 fixes what a full stand does.</summary>
    internal static double NitrogenFixed(double share, double quarterStand, double lowAtQuarterStand, double highAtFullStand) =>
        share <= quarterStand ? Interpolation.Line(0, 0, quarterStand, lowAtQuarterStand, share)
        : share < 1 ? Interpolation.Line(quarterStand, lowAtQuarterStand, 1, highAtFullStand, share)
        : highAtFullStand;

    /// <summary>Live seeds a square foot that a stand may have: those of the target, or of one full stand of the same kinds where
    /// their own published rates hold more.</summary>
    internal static double MostSeedsPerSquareFoot(double target, double liveSeeds, double fullStands) =>
        Math.Max(target, liveSeeds / fullStands);
}
