using System.Globalization;
using UnitsNet;

namespace PlotAgronomy.Record;

/// <summary>Writes one simple value: numbers in full, quantities in one fixed unit.</summary>
/// <remarks>Decimals are marked by a trailing <c>m</c>.</remarks>
internal static class RecordedWord
{
    internal const string None = "none";

    internal static bool TryOf(object? value, out string word)
    {
        word = value switch
        {
            null => None,
            string text => text,
            bool yes => yes ? "yes" : "no",
            Enum name => name.ToString(),
            char letter => letter.ToString(),
            int or long or short or byte or uint => ((IFormattable)value).ToString(null, CultureInfo.InvariantCulture),
            double number => Of(number),
            float number => Of(number),
            decimal exact => exact.ToString("G29", CultureInfo.InvariantCulture) + "m",
            DateOnly day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            TimeSpan time => Of(time.TotalSeconds),
            ApplicationRate rate => Of(rate.PoundsPerAcre),
            Fraction part => Of(part.Value),
            IQuantity quantity => Of(InFixedUnit(quantity)),
            _ => "",
        };
        return word.Length > 0 || value is string;
    }

    internal static string Of(double number) => number.ToString("R", CultureInfo.InvariantCulture);

    private static double InFixedUnit(IQuantity quantity) => quantity switch
    {
        Mass mass => mass.Pounds,
        Area area => area.Acres,
        Length length => length.Feet,
        Speed speed => speed.MilesPerHour,
        Volume volume => volume.CubicFeet,
        Temperature temperature => temperature.DegreesFahrenheit,
        TemperatureDelta difference => difference.DegreesFahrenheit,
        MassFlow flow => flow.PoundsPerMinute,
        VolumeFlow flow => flow.CubicFeetPerMinute,
        Density density => density.PoundsPerCubicFoot,
        AreaDensity density => density.KilogramsPerSquareMeter,
        LinearDensity density => density.PoundsPerFoot,
        Angle angle => angle.Degrees,
        Duration duration => duration.Seconds,
        Ratio ratio => ratio.DecimalFractions,
        _ => throw new NotSupportedException($"No fixed unit for {quantity.GetType().Name}."),
    };
}
