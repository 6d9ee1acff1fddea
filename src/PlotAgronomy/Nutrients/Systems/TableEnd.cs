using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>The line of a test at or beyond the end of a table or equation.</summary>
internal static class TableEnd
{
    internal static WorkedLine Line(DomainReading reading, double end, string? sourceId, DataStatus status) =>
        NutrientFormulas
            .All["none-beyond-the-end"]
            .Line(
                $"the test reads {SoilWords.Amount(reading.Value, reading.Unit)}, the table or equation ends at "
                    + $"{SoilWords.Amount(end, reading.Unit)}: {NutrientFormulas.PerAcre(0)}",
                ("nutrient", SoilWords.For(reading.Nutrient))
            )
            .From(sourceId, status);
}
