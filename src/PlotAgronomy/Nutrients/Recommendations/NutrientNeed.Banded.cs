namespace PlotAgronomy.Nutrients;

/// <content>Phosphate placed in a band beside the row works harder than broadcast phosphate.</content>
public abstract partial class NutrientNeed
{
    /// <summary>Banded phosphate that does the work of a broadcast rate.</summary>
    /// <param name="broadcast">P2O5 advised broadcast.</param>
    /// <returns>P2O5 in the band.</returns>
    /// <remarks>banded = broadcast / 1.5, when all of it goes through the planter. Source SOIL-CT1. It does not check how
    /// much salt a band may hold near the seed.</remarks>
    public static ApplicationRate BandedPhosphateFor(ApplicationRate broadcast) =>
        ApplicationRate.FromPoundsPerAcre(
            SystemMath.ConnecticutBanded(broadcast.PoundsPerAcre, NutrientConstants.All["CT-band-worth"])
        );

    /// <summary>Broadcast phosphate that does the work of a rate in the band.</summary>
    /// <param name="banded">P2O5 in the band.</param>
    /// <returns>P2O5 broadcast.</returns>
    /// <remarks>broadcast = banded x 1.5. Source SOIL-CT1.</remarks>
    public static ApplicationRate BroadcastPhosphateFor(ApplicationRate banded) =>
        banded * NutrientConstants.All["CT-band-worth"];
}
