namespace PlotAgronomy.Seeds;

/// <content>From a drilled to a broadcast rate and on to frost seeding: each step once, never twice.</content>
/// <remarks>Published ratios run from 1.2 to 2 (<see cref="BroadcastFactor.All"/>); the choice by seedbed is common practice.
/// Small seed on a firm, rolled bed takes the low end, peas, beans and cereals the high end. Many food-plot charts print
/// broadcast rates only: look first whether the rate is one already.</remarks>
public sealed partial class BroadcastFactor
{
    /// <summary>The factor from a drilled to a broadcast rate.</summary>
    /// <param name="cover">What happens to the seed.</param>
    /// <returns>1.25 covered and rolled, 1.5 only dragged or rolled, 2 on rough ground; common practice.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown cover.</exception>
    public static double FactorFor(SeedbedCover cover) =>
        Guard.Defined(cover) switch
        {
            SeedbedCover.CoveredAndRolled => SeedConstants.All["broadcast-factor-covered"],
            SeedbedCover.DraggedOrRolled => SeedConstants.All["broadcast-factor-dragged"],
            _ => SeedConstants.All["broadcast-factor-rough"],
        };

    /// <summary>The broadcast rate for a drilled one.</summary>
    /// <param name="drilled">Drilled rate.</param>
    /// <param name="cover">What happens to the seed.</param>
    /// <returns>The broadcast rate.</returns>
    /// <exception cref="ArgumentException">The rate is not a drilled one: the factor is applied once.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Unknown cover.</exception>
    /// <remarks>broadcast = drilled x factor.</remarks>
    public static PureLiveSeedRate BroadcastFrom(PureLiveSeedRate drilled, SeedbedCover cover) =>
        drilled.Method == SowingMethod.Drilled
            ? PureLiveSeedRate.FromRate(drilled.Rate * FactorFor(cover), SowingMethod.Broadcast)
            : throw new ArgumentException(
                $"This is a {SowingMethods.InWords(drilled.Method)} rate already: the broadcast factor is applied once, to a "
                    + "drilled rate.",
                nameof(drilled)
            );

    /// <summary>The drilled rate that a broadcast one stands for.</summary>
    /// <param name="broadcast">Broadcast rate.</param>
    /// <param name="cover">What would have happened to the broadcast seed.</param>
    /// <returns>The drilled rate.</returns>
    /// <exception cref="ArgumentException">The rate is not a broadcast one.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Unknown cover.</exception>
    /// <remarks>drilled = broadcast / factor.</remarks>
    public static PureLiveSeedRate DrilledFrom(PureLiveSeedRate broadcast, SeedbedCover cover) =>
        broadcast.Method == SowingMethod.Broadcast
            ? PureLiveSeedRate.FromRate(broadcast.Rate * (1 / FactorFor(cover)), SowingMethod.Drilled)
            : throw new ArgumentException(
                $"This is a {SowingMethods.InWords(broadcast.Method)} rate: only a broadcast one is brought back to a drilled "
                    + "one.",
                nameof(broadcast)
            );

    /// <summary>The frost-seeding rates for a broadcast one: the same, up to a tenth more.</summary>
    /// <param name="broadcast">Broadcast rate for a prepared seedbed.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentException">The rate is not a broadcast one, or is zero.</exception>
    /// <remarks>Published advice: at least the prepared-bed rate (SEED-S57), similar to slightly higher (SEED-S58). Doubling it
    /// is a mistake.</remarks>
    public static PureLiveSeedRateRange FrostSeededFrom(PureLiveSeedRate broadcast) =>
        broadcast.Method == SowingMethod.Broadcast
            ? PureLiveSeedRateRange.Between(
                PureLiveSeedRate.FromRate(broadcast.Rate, SowingMethod.FrostSeeded),
                PureLiveSeedRate.FromRate(broadcast.Rate * SeedConstants.All["frost-factor-high"], SowingMethod.FrostSeeded)
            )
            : throw new ArgumentException(
                "Frost seeding starts from the broadcast rate of a prepared seedbed, not from a "
                    + $"{SowingMethods.InWords(broadcast.Method)} one.",
                nameof(broadcast)
            );
}
