namespace PlotAgronomy.Soil;

/// <summary>State in which the laboratory extracted the sample. Potassium reads differently dried.</summary>
public enum SampleMoisture
{
    /// <summary>Field-moist or as a slurry, never dried.</summary>
    FieldMoist,

    /// <summary>Dried, as most laboratories do.</summary>
    Dried,
}
