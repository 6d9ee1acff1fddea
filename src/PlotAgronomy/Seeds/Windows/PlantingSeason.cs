namespace PlotAgronomy.Seeds;

/// <summary>The seasons in which publications give planting dates.</summary>
internal enum PlantingSeason
{
    Spring,
    Summer,
    Fall,
    LateWinter,
}
