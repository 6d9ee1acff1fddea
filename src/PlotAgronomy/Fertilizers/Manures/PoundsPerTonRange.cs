using System.Globalization;

namespace PlotAgronomy.Fertilizers;

/// <summary>A content of a manure in lb per short ton, from the poor to the rich end.</summary>
/// <remarks>The default is none.</remarks>
[JsonConverter(typeof(JsonTextConverter<PoundsPerTonRange>))]
public readonly record struct PoundsPerTonRange : IJsonText<PoundsPerTonRange>
{
    private PoundsPerTonRange(double low, double high) => (Low, High) = (low, high);

    /// <summary>Gets the poor end in lb per ton.</summary>
    public double Low { get; }

    /// <summary>Gets the rich end in lb per ton.</summary>
    public double High { get; }

    /// <summary>Creates a range.</summary>
    /// <param name="low">Poor end in lb per short ton; from 0 to 2000.</param>
    /// <param name="high">Rich end in lb per short ton; from <paramref name="low"/> to 2000.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static PoundsPerTonRange Between(double low, double high) =>
        new(
            Guard.Between(low, 0, ExactUnits.PoundsPerShortTon, "lb/ton"),
            Guard.Between(high, low, ExactUnits.PoundsPerShortTon, "lb/ton")
        );

    /// <summary>Invariant text.</summary>
    /// <returns>Text such as <c>45 to 75 lb/ton</c>.</returns>
    public override string ToString() =>
        Low < High
            ? string.Create(CultureInfo.InvariantCulture, $"{Low:0.##} to {High:0.##} lb/ton")
            : string.Create(CultureInfo.InvariantCulture, $"{Low:0.##} lb/ton");

    internal PoundsPerTonRange Times(double part) =>
        new(FertilizerMath.Available(Low, part), FertilizerMath.Available(High, part));

    static string IJsonText<PoundsPerTonRange>.ToJsonText(PoundsPerTonRange value) =>
        $"{ExactText.Of(value.Low)} to {ExactText.Of(value.High)} lb/ton";

    static PoundsPerTonRange IJsonText<PoundsPerTonRange>.FromJsonText(string text)
    {
        var (low, high) = ExactText.Halves(ExactText.Before(text, " lb/ton"), " to ");
        return Between(ExactText.Number(low), ExactText.Number(high));
    }
}
