using System.Globalization;
using PlotAgronomy.Soil;

namespace PlotAgronomy;

/// <summary>Soil pH measured in water. It is never a buffer pH: the compiler keeps the two apart.</summary>
/// <remarks>A pH that is not on the report is null, never zero.</remarks>
/// <example>
/// <code>
/// Console.WriteLine(WaterPh.FromValue(5.6));
/// // water pH 5.6
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed record WaterPh
{
    private WaterPh(double value) => Value = value;

    /// <summary>Gets the pH.</summary>
    public double Value { get; }

    /// <summary>Creates a water pH.</summary>
    /// <param name="value">pH; above 0, at most 14.</param>
    /// <returns>The pH.</returns>
    /// <exception cref="ArgumentOutOfRangeException">At most 0, above 14, NaN or infinite.</exception>
    public static WaterPh FromValue(double value) => new(PhScale.Check(value));

    /// <summary>Invariant text such as <c>water pH 5.4</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"water pH {Value:0.##}");
}
