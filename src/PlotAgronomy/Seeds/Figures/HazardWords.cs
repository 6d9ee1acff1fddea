namespace PlotAgronomy.Seeds;

/// <summary>Hazards as a sentence begins with them.</summary>
internal static class HazardWords
{
    internal static EnumWords<HazardType> Openings { get; } =
        new(
            (HazardType.PrussicAcid, "Prussic acid"),
            (HazardType.Nitrate, "Nitrate"),
            (HazardType.Bloat, "Bloat"),
            (HazardType.Toxicity, "Poison"),
            (HazardType.NoxiousListing, "Noxious listing"),
            (HazardType.Allelopathy, "Residue")
        );
}
