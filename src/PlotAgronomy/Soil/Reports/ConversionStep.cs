namespace PlotAgronomy.Soil;

/// <summary>One step of a conversion: numbers only; text is made when asked for.</summary>
internal readonly record struct ConversionStep(string Label, string Formula, double From, double To, string SourceId);
