namespace PlotAgronomy.Seeds;

/// <summary>Hazards a kind is known for.</summary>
public enum HazardType
{
    /// <summary>Hydrogen cyanide in leaves, above all after frost, drought and in regrowth.</summary>
    PrussicAcid,

    /// <summary>Nitrate in stalks under drought or much nitrogen.</summary>
    Nitrate,

    /// <summary>Bloat of ruminant livestock.</summary>
    Bloat,

    /// <summary>Poisonous plant parts or seed.</summary>
    Toxicity,

    /// <summary>Listed as a noxious or invasive plant, or as restricted weed seed, in some states.</summary>
    NoxiousListing,

    /// <summary>Residue that holds back small seeds sown after it.</summary>
    Allelopathy,
}
