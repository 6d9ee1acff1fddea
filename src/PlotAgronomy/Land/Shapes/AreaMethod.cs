namespace PlotAgronomy.Land;

/// <summary>How an area was found.</summary>
internal enum AreaMethod
{
    /// <summary>Taken as stated by a person or a map.</summary>
    Stated,

    /// <summary>From sides measured on the ground with a tape, wheel or rangefinder.</summary>
    Sides,

    /// <summary>From sides of which at least one was paced.</summary>
    Paces,

    /// <summary>From the corners of a map or drawing.</summary>
    MapOutline,

    /// <summary>From an outline in latitude and longitude.</summary>
    GeographicOutline,
}
