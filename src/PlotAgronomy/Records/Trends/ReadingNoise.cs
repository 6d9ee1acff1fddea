namespace PlotAgronomy.Records;

/// <summary>How much two samples of the same ground differ by sampling and analysis.</summary>
internal enum ReadingNoise
{
    /// <summary>No publication was seen.</summary>
    Unknown,

    /// <summary>Units of pH.</summary>
    Ph,

    /// <summary>A part of the reading.</summary>
    Nutrient,
}
