namespace PlotAgronomy.PlanFiles;

/// <summary>What becomes of the crop.</summary>
internal enum CropFate
{
    Browsed,
    CarriedOff,
}
