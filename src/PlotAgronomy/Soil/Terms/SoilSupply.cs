namespace PlotAgronomy.Soil;

/// <summary>How well a soil supplies a nutrient of itself, or how much it holds, as a system's map prints it.</summary>
public enum SoilSupply
{
    /// <summary>Low.</summary>
    Low,

    /// <summary>Medium.</summary>
    Medium,

    /// <summary>High.</summary>
    High,
}
