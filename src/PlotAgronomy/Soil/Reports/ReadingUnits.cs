namespace PlotAgronomy.Soil;

/// <summary>Which units an analyte can be printed in.</summary>
internal static class ReadingUnits
{
    /// <summary>Why nothing is measured so; null when it can be.</summary>
    internal static string? Misfit(SoilAnalyte analyte, SoilTestUnit unit) =>
        unit == SoilTestUnit.DecisiemensPerMeter && analyte != SoilAnalyte.SolubleSalts
            ? $"{SoilWords.Opening(analyte)} is not measured in {SoilWords.For(unit)}; soluble salts are."
        : IsCharge(unit) && !IsCation(analyte)
            ? $"{SoilWords.Opening(analyte)} is not printed in {SoilWords.For(unit)}; only cations are."
        : null;

    private static bool IsCharge(SoilTestUnit unit) =>
        unit
            is SoilTestUnit.MilliequivalentsPer100Grams
                or SoilTestUnit.MilliequivalentsPer100CubicCentimeters
                or SoilTestUnit.PercentSaturation;

    private static bool IsCation(SoilAnalyte analyte) =>
        analyte
            is SoilAnalyte.Potassium
                or SoilAnalyte.Calcium
                or SoilAnalyte.Magnesium
                or SoilAnalyte.Sodium
                or SoilAnalyte.Aluminum;
}
