using System.Globalization;

namespace PlotAgronomy.Fertilizers;

/// <summary>Two ends of a percentage.</summary>
/// <remarks>The default is 0 to 0.</remarks>
public readonly record struct PercentRange
{
    internal PercentRange(double low, double high) => (Low, High) = (low, high);

    /// <summary>Gets the lower end in percent.</summary>
    public double Low { get; }

    /// <summary>Gets the upper end in percent.</summary>
    public double High { get; }

    /// <summary>Invariant text.</summary>
    /// <returns>Text such as <c>9.4 to 17.2 %</c>.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Low:0.##} to {High:0.##} %");
}
