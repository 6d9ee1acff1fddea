using System.Globalization;

namespace PlotAgronomy.Soil;

/// <summary>Soil pH measured in a dilute salt solution, as Missouri reports it (pHs). It reads lower than a water pH.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record SaltPh
{
    private SaltPh(double value) => Value = value;

    /// <summary>Gets the pH.</summary>
    public double Value { get; }

    /// <summary>Creates a salt pH.</summary>
    /// <param name="value">pH; above 0, at most 14.</param>
    /// <returns>The pH.</returns>
    /// <exception cref="ArgumentOutOfRangeException">At most 0, above 14, NaN or infinite.</exception>
    public static SaltPh FromValue(double value) => new(PhScale.Check(value));

    /// <summary>Invariant text such as <c>salt pH 5.1</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"salt pH {Value:0.##}");
}
