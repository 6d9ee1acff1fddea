namespace PlotAgronomy;

/// <content>The unit words. Factors are exact (source DEF-UNITS).</content>
public static partial class Amounts
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
        ("ft|foot|feet", 1),
        ("in|inch|inches", 1.0 / 12),
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
}
