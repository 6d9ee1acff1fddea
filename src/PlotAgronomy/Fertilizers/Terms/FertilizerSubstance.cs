namespace PlotAgronomy.Fertilizers;

/// <summary>What a product is made of, as far as cautions, ceilings and mixing rules ask.</summary>
public enum FertilizerSubstance
{
    /// <summary>A mixed grade, or a material no rule here speaks of.</summary>
    Mixture,

    /// <summary>Urea.</summary>
    Urea,

    /// <summary>Ammonium nitrate.</summary>
    AmmoniumNitrate,

    /// <summary>Ammonium nitrate with limestone.</summary>
    CalciumAmmoniumNitrate,

    /// <summary>Ammonium sulfate.</summary>
    AmmoniumSulfate,

    /// <summary>Calcium nitrate.</summary>
    CalciumNitrate,

    /// <summary>Potassium nitrate.</summary>
    PotassiumNitrate,

    /// <summary>Urea and ammonium nitrate in water.</summary>
    UreaAmmoniumNitrateSolution,

    /// <summary>Ammonium thiosulfate solution.</summary>
    AmmoniumThiosulfate,

    /// <summary>Monoammonium phosphate.</summary>
    MonoammoniumPhosphate,

    /// <summary>Diammonium phosphate.</summary>
    DiammoniumPhosphate,

    /// <summary>Ammonium polyphosphate solution.</summary>
    AmmoniumPolyphosphate,

    /// <summary>Single superphosphate.</summary>
    SingleSuperphosphate,

    /// <summary>Triple superphosphate.</summary>
    TripleSuperphosphate,

    /// <summary>Ground phosphate rock.</summary>
    PhosphateRock,

    /// <summary>Potassium chloride, muriate of potash.</summary>
    PotassiumChloride,

    /// <summary>Potassium sulfate.</summary>
    PotassiumSulfate,

    /// <summary>Potassium magnesium sulfate.</summary>
    PotassiumMagnesiumSulfate,

    /// <summary>Monopotassium phosphate.</summary>
    MonopotassiumPhosphate,

    /// <summary>Gypsum.</summary>
    Gypsum,

    /// <summary>Elemental sulfur.</summary>
    ElementalSulfur,

    /// <summary>A borate.</summary>
    Borate,

    /// <summary>Lime or slag.</summary>
    Lime,

    /// <summary>Wood ash.</summary>
    WoodAsh,
}
