using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>The reading a system was made for, in the system's unit.</summary>
internal readonly record struct DomainReading(PlantNutrient Nutrient, SoilReading Reading, double Value, SoilTestUnit Unit)
{
    /// <summary>Start of a sentence, such as <c>Phosphorus at 12 ppm</c>.</summary>
    internal string Subject => $"{SoilWords.Opening(Reading.Analyte)} at {SoilWords.Amount(Value, Unit)}";

    /// <summary>A limit in the unit of the reading, such as <c>30 ppm</c>.</summary>
    internal string Limit(double limit, int decimals = 4) =>
        SoilWords.Amount(Math.Round(limit, decimals, MidpointRounding.AwayFromZero), Unit);

    internal string Words => $"{SoilWords.For(Reading.Analyte)} {SoilWords.Amount(Value, Unit)}";
}
