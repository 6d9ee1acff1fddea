namespace PlotAgronomy.Nutrients;

/// <summary>Region of the southern states by which some limits differ.</summary>
public enum SoilRegion
{
    /// <summary>Coastal Plain.</summary>
    CoastalPlain,

    /// <summary>Piedmont and mountains.</summary>
    Piedmont,
}
