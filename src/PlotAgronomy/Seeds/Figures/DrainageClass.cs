namespace PlotAgronomy.Seeds;

/// <summary>Natural drainage of a soil, from wettest to driest, in the words of the soil survey.</summary>
public enum DrainageClass
{
    /// <summary>Water at the surface for much of the growing season.</summary>
    VeryPoor,

    /// <summary>Wet at shallow depth for long periods.</summary>
    Poor,

    /// <summary>Wet at shallow depth for significant periods.</summary>
    SomewhatPoor,

    /// <summary>Wet within the root zone for short periods.</summary>
    ModeratelyWell,

    /// <summary>Water drains readily but not fast.</summary>
    Well,

    /// <summary>Water drains fast.</summary>
    SomewhatExcessive,

    /// <summary>Water drains very fast; droughty.</summary>
    Excessive,
}
