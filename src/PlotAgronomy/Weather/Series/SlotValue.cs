namespace PlotAgronomy.Weather;

/// <summary>A value that holds over a stretch of time, and the line of the file it stands in.</summary>
internal readonly record struct SlotValue(TimeSlot Slot, double Value, int Line = 0);
