using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>A weight of bulk seed as it comes out of the bag: coating, inert matter, weeds and dead seed included.</summary>
/// <remarks>Held in pounds. The default is zero. Equality is exact.</remarks>
[JsonConverter(typeof(JsonTextConverter<BulkSeedMass>))]
public readonly record struct BulkSeedMass : IJsonText<BulkSeedMass>
{
    private readonly SeedPounds weight;

    private BulkSeedMass(SeedPounds weight) => this.weight = weight;

    /// <summary>Gets the weight in lb.</summary>
    public double Pounds => weight.Value;

    /// <summary>The weight as a plain mass.</summary>
    /// <returns>The mass.</returns>
    public Mass ToMass() => Mass.FromPounds(Pounds);

    /// <summary>Says that a mass is bulk seed.</summary>
    /// <param name="mass">Mass; finite, at least 0.</param>
    /// <returns>The weight.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static BulkSeedMass FromMass(Mass mass) => new(SeedPounds.Of(mass));

    /// <summary>Creates a weight from pounds.</summary>
    /// <param name="pounds">lb of bulk seed; finite, at least 0.</param>
    /// <returns>The weight.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static BulkSeedMass FromPounds(double pounds) => new(SeedPounds.From(pounds));

    /// <summary>Sum of two weights.</summary>
    /// <param name="left">First.</param>
    /// <param name="right">Second.</param>
    /// <returns>The sum.</returns>
    public static BulkSeedMass operator +(BulkSeedMass left, BulkSeedMass right) => new(left.weight + right.weight);

    /// <summary>Text such as <c>12 lb bulk</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => weight.InWords("lb bulk");

    static string IJsonText<BulkSeedMass>.ToJsonText(BulkSeedMass value) => $"{ExactText.Of(value.Pounds)} lb bulk";

    static BulkSeedMass IJsonText<BulkSeedMass>.FromJsonText(string text) => FromPounds(ExactText.Number(text, "lb bulk"));
}
