using System.Collections.Immutable;

namespace PlotAgronomy.Seeds;

/// <summary>What the parts on a lot's own tag say when they are read together.</summary>
internal static class LotParts
{
    /// <summary>What is said of the parts alone; the rest is said where the lot is sown.</summary>
    private static readonly ImmutableArray<string> OfParts =
    [
        SeedCodes.TagPartMissing,
        SeedCodes.TagTooMuch,
        SeedCodes.MuchWeed,
        SeedCodes.Noxious,
        SeedCodes.CoatingOutsideInert,
        SeedCodes.MuchInert,
    ];

    /// <summary>Nothing where none of the parts beside pure seed was given: a sum of one part says nothing.</summary>
    internal static IEnumerable<Finding> Remarks(
        TagComponent component,
        Fraction? otherCrop,
        Fraction? inert,
        Fraction? weed,
        ImmutableArray<NoxiousWeed> noxious
    )
    {
        bool hasParts = otherCrop is not null || inert is not null || weed is not null;
        var coating = component.Analysis.Coating;

        // Coating is inert matter; a tag that gives it alone leaves the rest of the inert matter to be asked.
        var tag = new SeedTag
        {
            Components = [component],
            OtherCrop = otherCrop ?? Fraction.Zero,
            Inert = inert ?? coating,
            Weed = weed ?? Fraction.Zero,
            Coating = coating,
            Noxious = noxious,
        };
        return tag.Check().Where(f => OfParts.Contains(f.Code) && (hasParts || f.Code == SeedCodes.Noxious));
    }
}
