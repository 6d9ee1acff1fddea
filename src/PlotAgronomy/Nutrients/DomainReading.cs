using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>The reading a system was made for, in the system's unit.</summary>
internal sealed record DomainReading(PlantNutrient Nutrient, SoilReading Reading, double Value, SoilTestUnit Unit)
{
    internal NutrientRating? RatingOn(RatingScale scale, string systemId) => scale.ClassOf(Value) is { } found
        ? new NutrientRating { SystemId = systemId, Scale = scale, Class = found, Reading = Reading, ComparedValue = Value }
        : null;

    internal string Words => $"{SoilWords.For(Reading.Analyte)} {SoilWords.Amount(Value, Unit)}";
}
