namespace PlotAgronomy.Liming;

/// <summary>Why a method gives a soil no sum of its own, in the order of its checks.</summary>
internal enum LimeStop
{
    None,

    /// <summary>No lime: the soil is at its target.</summary>
    AtTarget,

    /// <summary>No lime: the soil is within the institution's margin.</summary>
    WithinMargin,

    Soil,

    Target,

    WaterPhMissing,

    WaterPhTooHigh,

    ReadingMissing,

    Formula,

    ReadingOutside,

    /// <summary>No lime: the reading lies above a table that says so.</summary>
    AboveTable,
}
