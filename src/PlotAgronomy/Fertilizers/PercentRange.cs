using System.Globalization;

namespace PlotAgronomy.Fertilizers;

/// <summary>Two ends of a percentage.</summary>
/// <remarks>The default is 0 to 0.</remarks>
[JsonConverter(typeof(JsonTextConverter<PercentRange>))]
public readonly record struct PercentRange : IJsonText<PercentRange>
{
    internal PercentRange(double low, double high) => (Low, High) = (low, high);

    /// <summary>Gets the lower end in percent.</summary>
    public double Low { get; }

    /// <summary>Gets the upper end in percent.</summary>
    public double High { get; }

    /// <summary>Invariant text.</summary>
    /// <returns>Text such as <c>9.4 to 17.2 %</c>.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Low:0.##} to {High:0.##} %");

    static string IJsonText<PercentRange>.ToJsonText(PercentRange value) =>
        $"{ExactText.Of(value.Low)} to {ExactText.Of(value.High)} %";

    static PercentRange IJsonText<PercentRange>.FromJsonText(string text)
    {
        var (low, high) = ExactText.Halves(ExactText.Before(text, " %"), " to ");
        return new(
            Guard.Between(ExactText.Number(low), 0, 100, "%", nameof(text)),
            Guard.Between(ExactText.Number(high), ExactText.Number(low), 100, "%", nameof(text))
        );
    }
}
