using UnitsNet;

namespace PlotAgronomy;

/// <summary>Reads and prints amounts as people write them: <c>0.62 ac</c>, <c>26,000 ft2</c>, <c>1.5 oz/1000 ft2</c>.</summary>
/// <remarks>Always in the invariant culture: a dot before decimals, commas only between groups of three digits.
/// A ton is the US short ton of 2000 lb; <c>t</c> and <c>tonne</c> are metric. Volumes are US. A number without a
/// unit is refused. What is printed without rounding reads back as the same amount.</remarks>
public static partial class Amounts
{
    /// <summary>Reads an area such as <c>0.62 ac</c> or <c>26,000 ft2</c>.</summary>
    /// <param name="text">Text of a person.</param>
    /// <param name="value">The area.</param>
    /// <param name="problem">What was expected, when the text cannot be read; else empty.</param>
    /// <returns>True when the text was read.</returns>
    public static bool TryReadArea(string? text, out Area value, out string problem)
    {
        bool read = Areas.TryRead(text, false, out double acres, out problem);
        value = Area.FromAcres(acres);
        return read;
    }

    /// <summary>Reads a mass such as <c>50 lb</c> or <c>45 g</c>.</summary>
    /// <inheritdoc cref="TryReadArea" path="/param"/>
    /// <inheritdoc cref="TryReadArea" path="/returns"/>
    public static bool TryReadMass(string? text, out Mass value, out string problem)
    {
        bool read = Masses.TryRead(text, false, out double pounds, out problem);
        value = Mass.FromPounds(pounds);
        return read;
    }

    /// <summary>Reads a length such as <c>14 ft</c>.</summary>
    /// <inheritdoc cref="TryReadArea" path="/param"/>
    /// <inheritdoc cref="TryReadArea" path="/returns"/>
    public static bool TryReadLength(string? text, out Length value, out string problem)
    {
        bool read = Lengths.TryRead(text, false, out double feet, out problem);
        value = Length.FromFeet(feet);
        return read;
    }

    /// <summary>Reads a speed such as <c>3 mph</c>.</summary>
    /// <inheritdoc cref="TryReadArea" path="/param"/>
    /// <inheritdoc cref="TryReadArea" path="/returns"/>
    public static bool TryReadSpeed(string? text, out Speed value, out string problem)
    {
        bool read = Speeds.TryRead(text, false, out double milesPerHour, out problem);
        value = Speed.FromMilesPerHour(milesPerHour);
        return read;
    }

    /// <summary>Reads a flow such as <c>2.1 lb/min</c>.</summary>
    /// <inheritdoc cref="TryReadArea" path="/param"/>
    /// <inheritdoc cref="TryReadArea" path="/returns"/>
    public static bool TryReadFlow(string? text, out MassFlow value, out string problem)
    {
        bool read = Flows.TryRead(text, false, out double poundsPerMinute, out problem);
        value = MassFlow.FromPoundsPerMinute(poundsPerMinute);
        return read;
    }

    /// <summary>Reads a volume such as <c>5 gal</c> or <c>2 bu</c>.</summary>
    /// <inheritdoc cref="TryReadArea" path="/param"/>
    /// <inheritdoc cref="TryReadArea" path="/returns"/>
    public static bool TryReadVolume(string? text, out Volume value, out string problem)
    {
        bool read = Volumes.TryRead(text, false, out double cubicFeet, out problem);
        value = Volume.FromCubicFeet(cubicFeet);
        return read;
    }

    /// <summary>Reads a bulk density such as <c>60 lb/bu</c>.</summary>
    /// <inheritdoc cref="TryReadArea" path="/param"/>
    /// <inheritdoc cref="TryReadArea" path="/returns"/>
    public static bool TryReadDensity(string? text, out Density value, out string problem)
    {
        bool read = Densities.TryRead(text, false, out double poundsPerCubicFoot, out problem);
        value = Density.FromPoundsPerCubicFoot(poundsPerCubicFoot);
        return read;
    }

    /// <summary>Reads an application rate such as <c>2.25 ton/ac</c> or <c>1.5 oz/1000 ft2</c>.</summary>
    /// <inheritdoc cref="TryReadArea" path="/param"/>
    /// <inheritdoc cref="TryReadArea" path="/returns"/>
    public static bool TryReadRate(string? text, out ApplicationRate value, out string problem)
    {
        bool read = RateUnits.Words.TryRead(text, false, out double poundsPerAcre, out problem);
        value = ApplicationRate.FromPoundsPerAcre(poundsPerAcre);
        return read;
    }

    /// <summary>Reads a duration such as <c>45 s</c> or <c>2.5 min</c>.</summary>
    /// <inheritdoc cref="TryReadArea" path="/param"/>
    /// <inheritdoc cref="TryReadArea" path="/returns"/>
    public static bool TryReadDuration(string? text, out TimeSpan value, out string problem)
    {
        bool read = Durations.TryRead(text, false, out double seconds, out problem);
        value = TimeSpan.FromSeconds(seconds);
        return read;
    }

    /// <summary>Reads a temperature such as <c>50 F</c> or <c>-2 C</c>.</summary>
    /// <inheritdoc cref="TryReadArea" path="/param"/>
    /// <inheritdoc cref="TryReadArea" path="/returns"/>
    public static bool TryReadTemperature(string? text, out Temperature value, out string problem)
    {
        bool read = Temperatures.TryRead(text, true, out double degrees, out problem);
        bool celsius = read && char.ToUpperInvariant(text!.Trim()[^1]) == 'C';
        value = celsius ? Temperature.FromDegreesCelsius(degrees) : Temperature.FromDegreesFahrenheit(degrees);
        return read;
    }

    /// <summary>Reads a fraction written in percent, such as <c>85 %</c>. A bare 0.85 is refused.</summary>
    /// <inheritdoc cref="TryReadArea" path="/param"/>
    /// <inheritdoc cref="TryReadArea" path="/returns"/>
    public static bool TryReadPercent(string? text, out Fraction value, out string problem)
    {
        value = default;
        if (!Percents.TryRead(text, false, out double percent, out problem))
        {
            return false;
        }

        if (percent > 100)
        {
            problem = $"'{text}' is above 100 %";
            return false;
        }

        value = Fraction.FromPercent(percent);
        return true;
    }

    /// <summary>Prints an area.</summary>
    /// <param name="value">Amount.</param>
    /// <param name="unit">Unit word to print in.</param>
    /// <param name="decimals">Most decimals to show, rounding to nearest; null prints every digit.</param>
    /// <returns>Text such as <c>0.62 ac</c>.</returns>
    /// <exception cref="ArgumentException">Unknown unit word.</exception>
    public static string Print(Area value, string unit = "ac", int? decimals = null)
    {
        double acres = value.Acres;
        return Areas.Print(acres, unit, decimals);
    }

    /// <summary>Prints a mass.</summary>
    /// <inheritdoc cref="Print(Area, string, int?)"/>
    public static string Print(Mass value, string unit = "lb", int? decimals = null)
    {
        double pounds = value.Pounds;
        return Masses.Print(pounds, unit, decimals);
    }

    /// <summary>Prints a length.</summary>
    /// <inheritdoc cref="Print(Area, string, int?)"/>
    public static string Print(Length value, string unit = "ft", int? decimals = null)
    {
        double feet = value.Feet;
        return Lengths.Print(feet, unit, decimals);
    }

    /// <summary>Prints a speed.</summary>
    /// <inheritdoc cref="Print(Area, string, int?)"/>
    public static string Print(Speed value, string unit = "mph", int? decimals = null)
    {
        double milesPerHour = value.MilesPerHour;
        return Speeds.Print(milesPerHour, unit, decimals);
    }

    /// <summary>Prints a flow.</summary>
    /// <inheritdoc cref="Print(Area, string, int?)"/>
    public static string Print(MassFlow value, string unit = "lb/min", int? decimals = null)
    {
        double poundsPerMinute = value.PoundsPerMinute;
        return Flows.Print(poundsPerMinute, unit, decimals);
    }

    /// <summary>Prints a volume.</summary>
    /// <inheritdoc cref="Print(Area, string, int?)"/>
    public static string Print(Volume value, string unit = "gal", int? decimals = null)
    {
        double cubicFeet = value.CubicFeet;
        return Volumes.Print(cubicFeet, unit, decimals);
    }

    /// <summary>Prints a density.</summary>
    /// <inheritdoc cref="Print(Area, string, int?)"/>
    public static string Print(Density value, string unit = "lb/bu", int? decimals = null)
    {
        double poundsPerCubicFoot = value.PoundsPerCubicFoot;
        return Densities.Print(poundsPerCubicFoot, unit, decimals);
    }

    /// <summary>Prints an application rate.</summary>
    /// <inheritdoc cref="Print(Area, string, int?)"/>
    public static string Print(ApplicationRate value, string unit = "lb/ac", int? decimals = null) =>
        RateUnits.Words.Print(value.PoundsPerAcre, unit, decimals);

    /// <summary>Prints a duration.</summary>
    /// <inheritdoc cref="Print(Area, string, int?)"/>
    public static string Print(TimeSpan value, string unit = "min", int? decimals = null) =>
        Durations.Print(value.TotalSeconds, unit, decimals);

    /// <summary>Prints a fraction in percent.</summary>
    /// <param name="value">Fraction.</param>
    /// <param name="decimals">Most decimals to show; null prints every digit.</param>
    /// <returns>Text such as <c>85 %</c>.</returns>
    public static string Print(Fraction value, int? decimals = null) => Percents.Print(value.Percent, "%", decimals);

    /// <summary>A weight for a scale: pounds from 10 lb on with one decimal, from 1 lb with two, below that ounces and
    /// grams.</summary>
    internal static string PrintForScale(Mass mass)
    {
        double pounds = mass.Pounds;
        return pounds >= 10 ? Print(mass, "lb", 1)
            : pounds >= 1 ? Print(mass, "lb", 2)
            : $"{Print(mass, "oz", 1)} ({Print(mass, "g", 0)})";
    }

    /// <summary>Prints a pure number, rounding to nearest.</summary>
    /// <param name="number">Number.</param>
    /// <param name="decimals">Most decimals to show.</param>
    /// <returns>Text such as <c>1,234.5</c>.</returns>
    public static string Print(double number, int decimals) => UnitWords.Rounded(number, decimals);
}
