namespace PlotAgronomy;

/// <summary>Unit in which a laboratory printed a reading.</summary>
public enum SoilTestUnit
{
    /// <summary>Parts per million by weight: mg per kg of soil.</summary>
    PartsPerMillion,

    /// <summary>Milligrams per cubic decimeter (per liter) of soil as scooped.</summary>
    MilligramsPerCubicDecimeter,

    /// <summary>Pounds per acre as laboratories print them: ppm doubled, by the furrow slice of 2,000,000 lb, whatever depth was
    /// sampled.</summary>
    PoundsPerAcre,

    /// <summary>Kilograms per hectare, by the same slice.</summary>
    KilogramsPerHectare,

    /// <summary>Milliequivalents per 100 g of soil; the same number as cmol of charge per kg.</summary>
    MilliequivalentsPer100Grams,

    /// <summary>Milliequivalents per 100 cubic centimeters of soil as scooped.</summary>
    MilliequivalentsPer100CubicCentimeters,

    /// <summary>Percent of the cation exchange capacity held by this cation.</summary>
    PercentSaturation,

    /// <summary>North Carolina's index (P-I, K-I, Mn-I, ...).</summary>
    NorthCarolinaIndex,

    /// <summary>Delaware's fertility index value (FIV).</summary>
    DelawareIndex,

    /// <summary>Oklahoma's index: the concentration in ppm, already doubled, so that it equals lb/ac.</summary>
    OklahomaIndex,

    /// <summary>Decisiemens per meter, for soluble salts.</summary>
    DecisiemensPerMeter,
}
