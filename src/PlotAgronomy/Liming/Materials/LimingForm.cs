namespace PlotAgronomy;

/// <summary>What a liming material is, for the cautions that go with it.</summary>
public enum LimingForm
{
    /// <summary>Ground limestone, calcitic or dolomitic.</summary>
    GroundLimestone,

    /// <summary>Fine limestone with a binder, made into pellets. It acts no faster than good fine lime.</summary>
    Pelletized,

    /// <summary>Limestone in water (fluid lime).</summary>
    Suspension,

    /// <summary>Hydrated (slaked) lime: caustic.</summary>
    Hydrated,

    /// <summary>Quick (burnt) lime: caustic.</summary>
    Quicklime,

    /// <summary>Marl.</summary>
    Marl,

    /// <summary>Ground shells.</summary>
    Shells,

    /// <summary>Wood ash.</summary>
    WoodAsh,

    /// <summary>Basic slag.</summary>
    Slag,

    /// <summary>Lime of a sugar-beet works.</summary>
    SugarBeetLime,

    /// <summary>Gypsum: not a liming material.</summary>
    Gypsum,

    /// <summary>Anything else.</summary>
    Other,
}
