namespace PlotAgronomy.Nutrients;

/// <summary>What must hold of a soil or sample for a rating scale to apply.</summary>
internal enum ScaleCondition
{
    /// <summary>Nothing beyond crop and extractant.</summary>
    None,

    /// <summary>Coastal Plain soils.</summary>
    CoastalPlain,

    /// <summary>Piedmont and mountain soils.</summary>
    Piedmont,

    /// <summary>Sample extracted field-moist or as a slurry.</summary>
    FieldMoist,

    /// <summary>Sample dried before extraction.</summary>
    Dried,

    /// <summary>Exchange capacity up to and including the system's limit.</summary>
    CecUpToLimit,

    /// <summary>Exchange capacity above the system's limit.</summary>
    CecAboveLimit,

    /// <summary>Loamy soil.</summary>
    Loamy,

    /// <summary>Sandy or organic soil.</summary>
    Sandy,
}
