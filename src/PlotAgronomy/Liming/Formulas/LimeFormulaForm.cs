namespace PlotAgronomy.Liming;

/// <summary>How a method gets from what was read to its rate.</summary>
internal enum LimeFormulaForm
{
    /// <summary>A printed table.</summary>
    Table,

    /// <summary>A straight line, or a square, of the reading.</summary>
    Linear,

    /// <summary>Acidity by buffer pH or as printed, and the part of it that lies below the target.</summary>
    AcidityFromBuffer,

    /// <summary>A figure for each meq of exchangeable acidity, or the least rate.</summary>
    ExchangeableAcidity,

    /// <summary>Exchange capacity by buffer, and the share of it that the target leaves acid.</summary>
    AcidShare,

    /// <summary>All of the neutralizable acidity.</summary>
    NeutralizableAcidity,

    /// <summary>The soil's own capacity for lime, a pH unit at a time.</summary>
    BufferCapacity,

    /// <summary>Steps by soil pH and reactive aluminum.</summary>
    ReactiveAluminum,

    /// <summary>Exchangeable acidity to whole thousands of lb/ac, as the table for turf was made.</summary>
    Turf,

    /// <summary>Texture and soil pH, without a buffer.</summary>
    Texture,
}
