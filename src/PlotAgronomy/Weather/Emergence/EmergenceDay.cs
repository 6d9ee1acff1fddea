namespace PlotAgronomy.Weather;

/// <summary>What the clock of a seed sees of one day.</summary>
internal readonly record struct EmergenceDay(DateOnly Date, double SoilCelsius, bool IsMoist);
