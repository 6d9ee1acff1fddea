using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>One kind to be grown and the lot it is taken from.</summary>
internal sealed class PlannedKind
{
    internal required KindShare Share { get; init; }

    /// <summary>The lots that were on offer, the one taken first.</summary>
    internal required SeedChoice Choice { get; init; }

    internal required SeedOffer Offer { get; init; }

    /// <summary>What is expected to be carried off; null for a browsed crop.</summary>
    internal CropYield? Yield { get; init; }

    internal CropKind Kind => Share.Kind;
}
