using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>A weight of pure live seed: the part of a bag that is the named kind and alive.</summary>
/// <remarks>Held in pounds. The default is zero. Equality is exact.</remarks>
[JsonConverter(typeof(JsonTextConverter<PureLiveSeedMass>))]
public readonly record struct PureLiveSeedMass : IJsonText<PureLiveSeedMass>
{
    private readonly SeedPounds weight;

    private PureLiveSeedMass(SeedPounds weight) => this.weight = weight;

    /// <summary>Gets the weight in lb.</summary>
    public double Pounds => weight.Value;

    /// <summary>The weight as a plain mass.</summary>
    /// <returns>The mass.</returns>
    public Mass ToMass() => Mass.FromPounds(Pounds);

    /// <summary>Says that a mass is pure live seed.</summary>
    /// <param name="mass">Mass; finite, at least 0.</param>
    /// <returns>The weight.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static PureLiveSeedMass FromMass(Mass mass) => new(SeedPounds.Of(mass));

    /// <summary>Creates a weight from pounds.</summary>
    /// <param name="pounds">lb of pure live seed; finite, at least 0.</param>
    /// <returns>The weight.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static PureLiveSeedMass FromPounds(double pounds) => new(SeedPounds.From(pounds));

    /// <summary>Sum of two weights.</summary>
    /// <param name="left">First.</param>
    /// <param name="right">Second.</param>
    /// <returns>The sum.</returns>
    public static PureLiveSeedMass operator +(PureLiveSeedMass left, PureLiveSeedMass right) => new(left.weight + right.weight);

    /// <summary>Text such as <c>12 lb PLS</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => weight.InWords("lb PLS");

    static string IJsonText<PureLiveSeedMass>.ToJsonText(PureLiveSeedMass value) => $"{ExactText.Of(value.Pounds)} lb PLS";

    static PureLiveSeedMass IJsonText<PureLiveSeedMass>.FromJsonText(string text) => FromPounds(ExactText.Number(text, "lb PLS"));
}
