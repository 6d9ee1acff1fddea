using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Planning;

/// <summary>Nitrogen that is given to the stand and bought apart: none of it goes on before the seed.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LaterNitrogen
{
    internal LaterNitrogen() { }

    /// <summary>Gets the dressings, in the order in which they are spread, without what came along with the fertilizer for the
    /// sowing.</summary>
    public required ImmutableArray<NitrogenDose> Doses { get; init; }

    /// <summary>Gets what the fertilizer for the sowing brings beyond the dose at sowing, which is taken off the
    /// dressings.</summary>
    public required ApplicationRate CameAlong { get; init; }

    /// <summary>Gets the cheapest nitrogen on offer, in whole packages, what is left over from the sowing first; open where no
    /// offer brings nitrogen alone, not needed where so much came along that the rest is too little to buy.</summary>
    public required Answer<Purchase> Purchase { get; init; }

    /// <summary>Gets the least for all dressings together.</summary>
    public ApplicationRate Low => ApplicationRate.FromPoundsPerAcre(Doses.Sum(d => d.Low.PoundsPerAcre));

    /// <summary>Gets the most for all dressings together.</summary>
    public ApplicationRate High => ApplicationRate.FromPoundsPerAcre(Doses.Sum(d => d.High.PoundsPerAcre));

    /// <summary>The dressings.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("; ", Doses.Select(d => d.ToString()));
}
