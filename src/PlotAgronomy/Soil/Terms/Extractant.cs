namespace PlotAgronomy;

/// <summary>The solution a laboratory drew the nutrient out of the soil with. A value without it cannot be rated.</summary>
public enum Extractant
{
    /// <summary>The report does not say.</summary>
    NotStated,

    /// <summary>Mehlich-1 (double acid).</summary>
    Mehlich1,

    /// <summary>Mehlich-3, the way of measuring not stated.</summary>
    Mehlich3,

    /// <summary>Mehlich-3, phosphorus measured by colour.</summary>
    Mehlich3Colorimetric,

    /// <summary>Mehlich-3, phosphorus measured by inductively coupled plasma; reads higher than by colour.</summary>
    Mehlich3Icp,

    /// <summary>Bray P-1.</summary>
    BrayP1,

    /// <summary>Olsen (sodium bicarbonate).</summary>
    Olsen,

    /// <summary>Neutral ammonium acetate, for potassium, calcium, magnesium and sodium.</summary>
    AmmoniumAcetate,

    /// <summary>Morgan (sodium acetate, pH 4.8).</summary>
    Morgan,

    /// <summary>Modified Morgan (ammonium acetate, pH 4.8).</summary>
    ModifiedMorgan,

    /// <summary>Mississippi (Lancaster).</summary>
    Lancaster,

    /// <summary>Hydrochloric acid, 0.1 normal, for zinc and manganese.</summary>
    HydrochloricAcid,

    /// <summary>DTPA, for zinc, manganese, copper and iron.</summary>
    Dtpa,

    /// <summary>Hot water, for boron.</summary>
    HotWater,

    /// <summary>Potassium chloride, 1 molar, for nitrate and for exchangeable aluminum.</summary>
    PotassiumChloride,

    /// <summary>Water of a saturated paste, for soluble salts.</summary>
    SaturatedPaste,
}
