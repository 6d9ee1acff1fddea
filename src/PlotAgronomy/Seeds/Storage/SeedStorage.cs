using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>Rules of thumb for keeping seed. They compare stores; they do not predict a lot: retest before sowing.</summary>
public static partial class SeedStorage
{
    /// <summary>Temperature in degrees Fahrenheit plus relative humidity in percent.</summary>
    /// <param name="temperature">Temperature of the store; finite.</param>
    /// <param name="relativeHumidity">Relative humidity of the store.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    /// <remarks>The rule of 100 (SEED-S34).</remarks>
    public static double HundredSum(Temperature temperature, Fraction relativeHumidity)
    {
        double fahrenheit = temperature.DegreesFahrenheit;
        return SeedMath.HundredSum(Guard.Finite(fahrenheit, "F", nameof(temperature)), relativeHumidity.Percent);
    }

    /// <summary>Says whether a store keeps the rule of 100: the sum stays below 100.</summary>
    /// <param name="temperature">Temperature of the store; finite.</param>
    /// <param name="relativeHumidity">Relative humidity of the store.</param>
    /// <returns>True when it does; a sum of exactly 100 does not.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static bool KeepsTheRuleOfHundred(Temperature temperature, Fraction relativeHumidity) =>
        HundredSum(temperature, relativeHumidity) < SeedConstants.All["rule-of-hundred"];

    /// <summary>How many times longer seed lives in a drier, cooler store.</summary>
    /// <param name="moistureNow">Seed moisture now, wet basis; from 5 to 14 %.</param>
    /// <param name="moistureThen">Seed moisture then; from 5 to 14 %.</param>
    /// <param name="temperatureNow">Temperature now; from 32 to 122 F.</param>
    /// <param name="temperatureThen">Temperature then; from 32 to 122 F.</param>
    /// <returns>The factor: above 1 when the seed lives longer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range in which the rule is used (its limits are from
    /// memory).</exception>
    /// <remarks>Halves rule (SEED-S81): each point of moisture and each 10 F less doubles the life.
    /// factor = 2^(moisture now - then) x 2^((temperature now - then) / 10).</remarks>
    public static double LifeFactor(
        Fraction moistureNow,
        Fraction moistureThen,
        Temperature temperatureNow,
        Temperature temperatureThen
    )
    {
        double now = temperatureNow.DegreesFahrenheit;
        double then = temperatureThen.DegreesFahrenheit;
        Moisture(moistureNow, nameof(moistureNow));
        Moisture(moistureThen, nameof(moistureThen));
        InRange(now, nameof(temperatureNow));
        InRange(then, nameof(temperatureThen));
        return SeedMath.LifeFactor(
            moistureNow.Percent - moistureThen.Percent,
            now - then,
            SeedConstants.All["halves-temperature-step"]
        );
    }

    private static void Moisture(Fraction moisture, string name) =>
        Guard.Between(
            moisture.Percent,
            SeedConstants.All["halves-moisture-low"],
            SeedConstants.All["halves-moisture-high"],
            "% moisture",
            name
        );

    private static void InRange(double fahrenheit, string name) =>
        Guard.Between(
            fahrenheit,
            SeedConstants.All["halves-temperature-low"],
            SeedConstants.All["halves-temperature-high"],
            "F",
            name
        );
}
