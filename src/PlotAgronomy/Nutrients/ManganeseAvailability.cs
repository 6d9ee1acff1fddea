using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Manganese availability index: the test and the pH together, because manganese locks up as the pH rises.</summary>
/// <remarks>index = constant + per unit x test - 15.2 x pH. New Jersey calls it deficient below 25 and warns above 100
/// (source SOIL-NJ1). Equation B of North Carolina, which the wildlife rows use, is from memory and asked for by name.</remarks>
public static class ManganeseAvailability
{
    /// <summary>North Carolina's equation A: 101.2 + 0.6 x Mn-I - 15.2 x pH (source SOIL-NC3).</summary>
    /// <param name="manganese">Manganese reading as a North Carolina index.</param>
    /// <param name="ph">Water pH.</param>
    /// <returns>The index, a pure number.</returns>
    /// <exception cref="ArgumentException">Not a manganese reading in that unit.</exception>
    public static double NorthCarolinaA(SoilReading manganese, WaterPh ph) => NorthCarolina("NC-Mn-A-constant", manganese, ph);

    /// <summary>North Carolina's equation B: 108.2 + 0.6 x Mn-I - 15.2 x pH. The 108.2 is from memory (source SOIL-NC3).</summary>
    /// <inheritdoc cref="NorthCarolinaA" path="/param"/>
    /// <inheritdoc cref="NorthCarolinaA" path="/returns"/>
    /// <inheritdoc cref="NorthCarolinaA" path="/exception"/>
    public static double NorthCarolinaB(SoilReading manganese, WaterPh ph) => NorthCarolina("NC-Mn-B-constant", manganese, ph);

    /// <summary>New Jersey's form: 101.7 + 3.75 x ppm - 15.2 x pH (source SOIL-NJ1).</summary>
    /// <param name="manganese">Manganese reading by Mehlich-3 in ppm.</param>
    /// <param name="ph">Water pH.</param>
    /// <returns>The index, a pure number.</returns>
    /// <exception cref="ArgumentException">Not a manganese reading in that unit.</exception>
    public static double NewJersey(SoilReading manganese, WaterPh ph) => SystemMath.ManganeseIndex(
        SystemConstants.Value("NJ-Mn-constant"), SystemConstants.Value("NJ-Mn-per-ppm"), Checked(manganese, SoilTestUnit.PartsPerMillion), SystemConstants.Value("NJ-Mn-per-pH"), PhOf(ph));

    private static double NorthCarolina(string constant, SoilReading manganese, WaterPh ph) => SystemMath.ManganeseIndex(
        SystemConstants.Value(constant), SystemConstants.Value("NC-Mn-per-index"), Checked(manganese, SoilTestUnit.NorthCarolinaIndex), SystemConstants.Value("NC-Mn-per-pH"), PhOf(ph));

    private static double PhOf(WaterPh ph)
    {
        ArgumentNullException.ThrowIfNull(ph);
        return ph.Value;
    }

    private static double Checked(SoilReading manganese, SoilTestUnit unit)
    {
        ArgumentNullException.ThrowIfNull(manganese);
        return manganese.Analyte == SoilAnalyte.Manganese && manganese.Unit == unit && ReportReadings.IsAccepted(manganese.Extractant, [Extractant.Mehlich3])
            ? manganese.PrintedValue
            : throw new ArgumentException($"Must be manganese by Mehlich-3 in {SoilWords.For(unit)}, found {manganese}.", nameof(manganese));
    }
}
