namespace PlotAgronomy.Liming;

/// <summary>What a published lime equation is written for.</summary>
internal enum LinearReading
{
    BufferPh,

    /// <summary>Ten times the buffer pH.</summary>
    LimeTestIndex,

    WaterPh,
}
