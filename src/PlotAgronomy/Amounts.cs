using UnitsNet;

namespace PlotAgronomy;

/// <summary>Reads and prints amounts as people write them: <c>0.62 ac</c>, <c>26,000 ft2</c>, <c>1.5 oz/1000 ft2</c>.</summary>
/// <remarks>Always in the invariant culture: a dot before decimals, commas only between groups of three digits.
/// A ton is the US short ton of 2000 lb; <c>t</c> and <c>tonne</c> are metric. Volumes are US. A number without a
/// unit is refused. Factors are exact (source DEF-UNITS). What is printed without rounding reads back as the same
/// amount.</remarks>
/// <example>
/// <code>
/// if (Amounts.TryReadRate("2 lb/1000 ft2", out var rate, out string problem))
/// {
///     Console.WriteLine(Amounts.Print(rate, "lb/ac", 1));
/// }
///
/// Console.WriteLine(Amounts.TryReadMass("5 stone", out _, out problem));
/// Console.WriteLine(problem);
/// // 87.1 lb/ac
/// // False
/// // unknown unit 'stone' in '5 stone': expected a weight such as '50 lb' or '45 g' (units: lb, oz, ton, g, kg, t)
/// </code>
/// </example>
public static class Amounts
{
    private const double CubicFeetPerGallon = 231 / ExactUnits.CubicInchesPerCubicFoot;
    private const double CubicMetersPerCubicFoot = ExactUnits.MetersPerFoot * ExactUnits.MetersPerFoot * ExactUnits.MetersPerFoot;
    private const double MetersPerMile = ExactUnits.MetersPerFoot * ExactUnits.FeetPerMile;

    private static readonly UnitWords Areas = new(
        "an area",
        "'0.62 ac' or '26,000 ft2'",
        ("ac|acre|acres", 1),
        ("ft2|sq ft|sqft|ft²", 1 / ExactUnits.SquareFeetPerAcre),
        ("yd2|sq yd|yd²", 9 / ExactUnits.SquareFeetPerAcre),
        ("m2|sq m|m²", 1 / ExactUnits.SquareMetersPerAcre),
        ("ha|hectare|hectares", 10_000 / ExactUnits.SquareMetersPerAcre)
    );

    private static readonly UnitWords Masses = new(
        "a weight",
        "'50 lb' or '45 g'",
        ("lb|lbs|pound|pounds", 1),
        ("oz|ounce|ounces", 1.0 / 16),
        ("ton|tons", 2000),
        ("g|gram|grams", 0.001 / ExactUnits.KilogramsPerPound),
        ("kg", 1 / ExactUnits.KilogramsPerPound),
        ("t|tonne|tonnes", 1000 / ExactUnits.KilogramsPerPound)
    );

    private static readonly UnitWords Lengths = new(
        "a length",
        "'14 ft' or '4.2 m'",
        ("ft|foot|feet|'", 1),
        ("in|inch|inches|\"", 1.0 / 12),
        ("yd|yard|yards", 3),
        ("mi|mile|miles", ExactUnits.FeetPerMile),
        ("m|meter|meters", 1 / ExactUnits.MetersPerFoot),
        ("cm", 0.01 / ExactUnits.MetersPerFoot),
        ("mm", 0.001 / ExactUnits.MetersPerFoot),
        ("km", 1000 / ExactUnits.MetersPerFoot)
    );

    private static readonly UnitWords Speeds = new(
        "a speed",
        "'3 mph' or '264 ft/min'",
        ("mph", 1),
        ("ft/min", 60 / ExactUnits.FeetPerMile),
        ("ft/s", 3600 / ExactUnits.FeetPerMile),
        ("km/h", 1000 / MetersPerMile),
        ("m/s", 3600 / MetersPerMile)
    );

    private static readonly UnitWords Flows = new(
        "a flow",
        "'2.1 lb/min' or '16 g/s'",
        ("lb/min", 1),
        ("lb/s", 60),
        ("oz/min", 1.0 / 16),
        ("g/min", 0.001 / ExactUnits.KilogramsPerPound),
        ("g/s", 0.06 / ExactUnits.KilogramsPerPound),
        ("kg/min", 1 / ExactUnits.KilogramsPerPound)
    );

    private static readonly UnitWords Volumes = new(
        "a volume",
        "'5 gal' or '2 bu'",
        ("gal|gallon|gallons", CubicFeetPerGallon),
        ("qt|quart|quarts", CubicFeetPerGallon / 4),
        ("pt|pint|pints", CubicFeetPerGallon / 8),
        ("cup|cups", CubicFeetPerGallon / 16),
        ("bu|bushel|bushels", ExactUnits.CubicFeetPerBushel),
        ("ft3|cu ft|ft³", 1),
        ("yd3|cu yd|yd³", 27),
        ("L|liter|liters|litre|litres", 0.001 / CubicMetersPerCubicFoot),
        ("mL", 0.000001 / CubicMetersPerCubicFoot),
        ("m3|m³", 1 / CubicMetersPerCubicFoot)
    );

    private static readonly UnitWords Densities = new(
        "a bulk density",
        "'60 lb/bu' or '770 kg/m3'",
        ("lb/ft3|lb/ft³", 1),
        ("lb/bu", 1 / ExactUnits.CubicFeetPerBushel),
        ("lb/gal", 1 / CubicFeetPerGallon),
        ("kg/m3|kg/m³", CubicMetersPerCubicFoot / ExactUnits.KilogramsPerPound),
        ("g/cm3|g/mL|kg/L", 1000 * CubicMetersPerCubicFoot / ExactUnits.KilogramsPerPound)
    );

    private static readonly UnitWords Durations = new(
        "a time",
        "'45 s' or '2.5 min'",
        ("s|sec|second|seconds", 1),
        ("min|minute|minutes", 60),
        ("h|hour|hours", 3600),
        ("d|day|days", 86_400)
    );

    private static readonly UnitWords Temperatures = new("a temperature", "'50 F' or '10 C'", ("F|°F", 1), ("C|°C", 1));

    private static readonly UnitWords Percents = new("a percentage", "'85 %'", ("%|percent", 1));

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

    /// <summary>Reads a mass such as <c>50 lb</c>, <c>1 lb 9 oz</c> or <c>45 g</c>.</summary>
    /// <inheritdoc cref="TryReadArea" path="/param"/>
    /// <inheritdoc cref="TryReadArea" path="/returns"/>
    public static bool TryReadMass(string? text, out Mass value, out string problem)
    {
        problem = "";
        bool read =
            Masses.TryReadMixed(text, "lb", "oz", out double pounds) || Masses.TryRead(text, false, out pounds, out problem);
        value = Mass.FromPounds(pounds);
        return read;
    }

    /// <summary>Reads a length such as <c>14 ft</c>, or <c>12 ft 6 in</c>.</summary>
    /// <inheritdoc cref="TryReadArea" path="/param"/>
    /// <inheritdoc cref="TryReadArea" path="/returns"/>
    public static bool TryReadLength(string? text, out Length value, out string problem)
    {
        problem = "";
        bool read =
            Lengths.TryReadMixed(text, "ft", "in", out double feet) || Lengths.TryRead(text, false, out feet, out problem);
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
        bool read = UnitWords.Rates.TryRead(text, false, out double poundsPerAcre, out problem);
        value = ApplicationRate.FromPoundsPerAcre(poundsPerAcre);
        return read;
    }

    /// <summary>Reads a duration such as <c>45 s</c>, <c>2.5 min</c> or <c>1 min 30 s</c>.</summary>
    /// <inheritdoc cref="TryReadArea" path="/param"/>
    /// <inheritdoc cref="TryReadArea" path="/returns"/>
    public static bool TryReadDuration(string? text, out TimeSpan value, out string problem)
    {
        problem = "";
        bool read =
            Durations.TryReadMixed(text, "min", "s", out double seconds)
            || Durations.TryRead(text, false, out seconds, out problem);
        value = TimeSpan.FromSeconds(seconds);
        return read;
    }

    /// <summary>Reads a temperature such as <c>50 F</c> or <c>-2 C</c>.</summary>
    /// <inheritdoc cref="TryReadArea" path="/param"/>
    /// <inheritdoc cref="TryReadArea" path="/returns"/>
    internal static bool TryReadTemperature(string? text, out Temperature value, out string problem)
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
    /// <param name="decimals">Most decimals to show, 0 to 15, rounding to nearest; null prints every digit.</param>
    /// <returns>Text such as <c>0.62 ac</c>.</returns>
    /// <exception cref="ArgumentException">Unknown unit word, or decimals outside 0 to 15.</exception>
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

    /// <summary>Prints a length as a tape shows it: whole feet, then inches.</summary>
    /// <param name="value">Length; at least 0.</param>
    /// <param name="decimals">Most decimals of the inches, 0 to 15.</param>
    /// <returns>Text such as <c>12 ft 6 in</c>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative length, or decimals outside their range.</exception>
    public static string PrintFeetAndInches(Length value, int decimals = 0)
    {
        double feet = value.Feet;
        return UnitWords.PrintFeetAndInches(Guard.AtLeast(feet, 0, "ft", nameof(value)), decimals);
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
        UnitWords.Rates.Print(value.PoundsPerAcre, unit, decimals);

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

    /// <summary>So many things, in the singular where it is one: <c>1 bag</c>, <c>1,200 bags</c>.</summary>
    internal static string PrintCount(int count, string thing) => $"{Print(count, 0)} {thing}{PluralOf(Print(count, 0))}";

    /// <summary>What a word ends in behind a number: nothing behind 1.</summary>
    internal static string PluralOf(string number) => number == "1" ? "" : "s";
}
