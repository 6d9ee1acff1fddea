using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>A nutrient of the report that a system has limits for but could not rate, and why.</summary>
public sealed class UnratedNutrient
{
    /// <summary>Gets what was measured.</summary>
    public required SoilAnalyte Analyte { get; init; }

    /// <summary>Gets the reason in one sentence.</summary>
    public required string Reason { get; init; }

    /// <summary>Nutrient and reason.</summary>
    /// <returns>Text such as <c>potassium: ...</c>.</returns>
    public override string ToString() => $"{SoilWords.For(Analyte)}: {Reason}";
}
