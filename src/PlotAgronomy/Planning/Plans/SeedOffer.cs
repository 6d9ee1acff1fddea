using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>A seed lot on offer in packages.</summary>
internal sealed class SeedOffer
{
    internal required SeedLot Lot { get; init; }

    internal required Mass Package { get; init; }

    internal required decimal Price { get; init; }
}
