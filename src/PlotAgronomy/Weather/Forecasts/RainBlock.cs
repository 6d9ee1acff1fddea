namespace PlotAgronomy.Weather;

/// <summary>A stretch for which one chance of rain is given: six hours of the grid, half a day of the printed forecast.</summary>
/// <param name="Slot">The stretch.</param>
/// <param name="Chance">Chance of measurable rain, from 0 to 1; null where none is given.</param>
/// <param name="Millimeters">Amount over the whole stretch; null where none is given.</param>
internal readonly record struct RainBlock(TimeSlot Slot, double? Chance, double? Millimeters);
