namespace PlotAgronomy.Fertilizers;

/// <summary>An element, oxide or salt in which a nutrient is stated.</summary>
public enum ChemicalForm
{
    /// <summary>Nitrogen, N.</summary>
    Nitrogen,

    /// <summary>Nitrate, NO3.</summary>
    Nitrate,

    /// <summary>Ammonium, NH4.</summary>
    Ammonium,

    /// <summary>Ammonia, NH3. Labels before about 1930 declared it in place of nitrogen.</summary>
    Ammonia,

    /// <summary>Elemental phosphorus, P.</summary>
    Phosphorus,

    /// <summary>Phosphate, P2O5: the label's form.</summary>
    Phosphate,

    /// <summary>Elemental potassium, K.</summary>
    Potassium,

    /// <summary>Potash, K2O: the label's form.</summary>
    Potash,

    /// <summary>Potassium chloride, KCl.</summary>
    PotassiumChloride,

    /// <summary>Potassium sulfate, K2SO4.</summary>
    PotassiumSulfate,

    /// <summary>Potassium nitrate, KNO3.</summary>
    PotassiumNitrate,

    /// <summary>Monopotassium phosphate, KH2PO4.</summary>
    MonopotassiumPhosphate,

    /// <summary>Chlorine, Cl.</summary>
    Chlorine,

    /// <summary>Sodium, Na.</summary>
    Sodium,

    /// <summary>Sodium oxide, Na2O.</summary>
    SodiumOxide,

    /// <summary>Common salt, NaCl.</summary>
    SodiumChloride,

    /// <summary>Sodium nitrate, NaNO3.</summary>
    SodiumNitrate,

    /// <summary>Sulfur, S.</summary>
    Sulfur,

    /// <summary>Sulfate, SO4.</summary>
    Sulfate,

    /// <summary>Sulfur trioxide, SO3: the form of European labels.</summary>
    SulfurTrioxide,

    /// <summary>Calcium, Ca.</summary>
    Calcium,

    /// <summary>Calcium oxide, CaO: the form of European labels.</summary>
    CalciumOxide,

    /// <summary>Calcium carbonate, CaCO3.</summary>
    CalciumCarbonate,

    /// <summary>Hydrated lime, Ca(OH)2.</summary>
    CalciumHydroxide,

    /// <summary>Dolomite, CaMg(CO3)2.</summary>
    Dolomite,

    /// <summary>Anhydrite, CaSO4.</summary>
    CalciumSulfate,

    /// <summary>Gypsum, CaSO4 with two waters.</summary>
    Gypsum,

    /// <summary>Monocalcium phosphate monohydrate, the main salt of triple superphosphate.</summary>
    MonocalciumPhosphate,

    /// <summary>Magnesium, Mg.</summary>
    Magnesium,

    /// <summary>Magnesium oxide, MgO: the form of European labels.</summary>
    MagnesiumOxide,

    /// <summary>Magnesium carbonate, MgCO3.</summary>
    MagnesiumCarbonate,

    /// <summary>Magnesium sulfate without water, MgSO4.</summary>
    MagnesiumSulfate,

    /// <summary>Kieserite, MgSO4 with one water.</summary>
    Kieserite,

    /// <summary>Epsom salts, MgSO4 with seven waters.</summary>
    EpsomSalts,

    /// <summary>Boron, B.</summary>
    Boron,

    /// <summary>Boron oxide, B2O3.</summary>
    BoronOxide,

    /// <summary>Borax, Na2B4O7 with ten waters.</summary>
    Borax,

    /// <summary>Borate 5-hydrate, Na2B4O7 with five waters.</summary>
    BoratePentahydrate,

    /// <summary>Boric acid, H3BO3.</summary>
    BoricAcid,

    /// <summary>Zinc, Zn.</summary>
    Zinc,

    /// <summary>Zinc oxide, ZnO.</summary>
    ZincOxide,

    /// <summary>Zinc sulfate monohydrate.</summary>
    ZincSulfate,

    /// <summary>Manganese, Mn.</summary>
    Manganese,

    /// <summary>Manganese sulfate monohydrate.</summary>
    ManganeseSulfate,

    /// <summary>Manganese sulfate with four waters.</summary>
    ManganeseSulfateTetrahydrate,

    /// <summary>Ammonium nitrate, NH4NO3.</summary>
    AmmoniumNitrate,

    /// <summary>Ammonium sulfate, (NH4)2SO4.</summary>
    AmmoniumSulfate,

    /// <summary>Urea, CO(NH2)2.</summary>
    Urea,

    /// <summary>Monoammonium phosphate, NH4H2PO4.</summary>
    MonoammoniumPhosphate,

    /// <summary>Diammonium phosphate, (NH4)2HPO4.</summary>
    DiammoniumPhosphate,
}
