using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>The line of a test at or beyond the end of a table or equation.</summary>
internal static class TableEnd
{
    internal static WorkedLine Line(DomainReading reading, double end, Origin origin) =>
        NutrientFormulas
            .All["none-beyond-the-end"]
            .Line(
                $"the reading of {SoilWords.Amount(reading.Value, reading.Unit)} lies at or beyond the end, "
                    + $"{SoilWords.Amount(end, reading.Unit)}: 0 lb/ac",
                ("nutrient", SoilWords.For(reading.Nutrient))
            )
            .From(origin);
}
