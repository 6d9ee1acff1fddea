using PlotAgronomy.Seeds;

namespace PlotAgronomy;

/// <content>Lowest germination a state standard accepts, used here as the mark of a poor lot.</content>
/// <remarks>West Virginia Code of State Rules 61-09, Appendix 1 (SEED-S37); kinds it does not list take its general
/// floor.</remarks>
public sealed partial class SeedAnalysis
{
    private static readonly KindLimits Floors = new("Seeds/Data/germination-floors.csv", "lowest_germination_pct");

    /// <summary>The floor for a kind.</summary>
    /// <param name="kind">Kind.</param>
    /// <returns>Lowest acceptable germination.</returns>
    public static Fraction GerminationFloorFor(CropKind kind) => Floors.For(kind);
}
