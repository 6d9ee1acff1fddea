namespace PlotAgronomy.Fertilizers;

/// <summary>How a material lies in its package.</summary>
internal enum MaterialForm
{
    /// <summary>Granules.</summary>
    Granule,

    /// <summary>Coated granules.</summary>
    CoatedGranule,

    /// <summary>Granules or powder.</summary>
    GranuleOrPowder,

    /// <summary>Prills.</summary>
    Prill,

    /// <summary>Pastilles.</summary>
    Pastille,

    /// <summary>Crystals.</summary>
    Crystal,

    /// <summary>Fine crystals.</summary>
    FineCrystal,

    /// <summary>Crystals or granules.</summary>
    CrystalOrGranule,

    /// <summary>Powder.</summary>
    Powder,

    /// <summary>A liquid.</summary>
    Liquid,

    /// <summary>A gas under pressure.</summary>
    GasUnderPressure,
}
