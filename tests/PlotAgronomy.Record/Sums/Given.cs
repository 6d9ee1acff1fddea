using System.Security.Cryptography;
using System.Text;
using UnitsNet;

namespace PlotAgronomy.Record.Sums;

/// <summary>Short ways to write the inputs of a sum.</summary>
internal static class Given
{
    internal static ApplicationRate PerAcre(double pounds) => ApplicationRate.FromPoundsPerAcre(pounds);

    internal static ApplicationRate TonsPerAcre(double tons) => ApplicationRate.FromShortTonsPerAcre(tons);

    internal static Fraction Percent(double percent) => Fraction.FromPercent(percent);

    internal static Area Acres(double acres) => Area.FromAcres(acres);

    internal static Mass Pounds(double pounds) => Mass.FromPounds(pounds);

    internal static Mass Grams(double grams) => Mass.FromGrams(grams);

    internal static Length Feet(double feet) => Length.FromFeet(feet);

    internal static Length Inches(double inches) => Length.FromInches(inches);

    internal static Speed Mph(double milesPerHour) => Speed.FromMilesPerHour(milesPerHour);

    internal static MassFlow PoundsPerMinute(double pounds) => MassFlow.FromPoundsPerMinute(pounds);

    internal static Temperature Fahrenheit(double degrees) => Temperature.FromDegreesFahrenheit(degrees);

    /// <summary>Density in the trade's pounds per bushel.</summary>
    internal static Density PerBushel(double pounds) => Density.FromPoundsPerCubicFoot(pounds / ExactUnits.CubicFeetPerBushel);

    internal static Density GramsPerCubicCentimeter(double grams) => Density.FromGramsPerCubicCentimeter(grams);

    /// <summary>Several values of one case under meanings of their own.</summary>
    internal static Dictionary<string, object?> Named(params ReadOnlySpan<(string Meaning, object? Value)> values)
    {
        var named = new Dictionary<string, object?>(StringComparer.Ordinal);
        foreach (var (meaning, value) in values)
        {
            named.Add(meaning, value);
        }

        return named;
    }

    /// <summary>Stands in for a drawing, which is told from another by its digest.</summary>
    internal static string Digest(string drawing) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(drawing)));

    /// <summary>A name of a list as words: <c>SiltLoam</c> is "silt loam".</summary>
    internal static string Words<T>(T name) where T : struct, Enum =>
        string.Concat(name.ToString().Select((c,
            i) => char.IsUpper(c) ? (i == 0 ? "" : " ") + char.ToLowerInvariant(c) : c.ToString()));
}
