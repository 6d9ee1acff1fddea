using System.Globalization;

namespace PlotAgronomy.Nutrients;

/// <summary>Yield of a crop per acre, in bushels of grain or tons of forage. It is asked for, never assumed.</summary>
/// <remarks>The default is zero bushels. Equality is exact.</remarks>
[JsonConverter(typeof(JsonTextConverter<CropYield>))]
public readonly record struct CropYield : IJsonText<CropYield>
{
    private CropYield(double perAcre, YieldUnit unit)
    {
        PerAcre = perAcre;
        Unit = unit;
    }

    /// <summary>Gets the yield per acre, in <see cref="Unit"/>.</summary>
    public double PerAcre { get; }

    /// <summary>Gets the unit.</summary>
    public YieldUnit Unit { get; }

    /// <summary>Creates a yield from bushels per acre.</summary>
    /// <param name="bushels">Yield; finite, at least 0 bu/ac.</param>
    /// <returns>The yield.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static CropYield FromBushelsPerAcre(double bushels) => new(Guard.AtLeast(bushels, 0, "bu/ac"), YieldUnit.Bushel);

    /// <summary>Creates a yield from US tons per acre.</summary>
    /// <param name="tons">Yield; finite, at least 0 ton/ac.</param>
    /// <returns>The yield.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static CropYield FromTonsPerAcre(double tons) => new(Guard.AtLeast(tons, 0, "ton/ac"), YieldUnit.Ton);

    /// <summary>Invariant text such as <c>60 bu/ac</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{PerAcre:0.###} {NutrientWords.YieldsPerAcre[Unit]}");

    static string IJsonText<CropYield>.ToJsonText(CropYield value) =>
        $"{ExactText.Of(value.PerAcre)} {NutrientWords.YieldsPerAcre[value.Unit]}";

    static CropYield IJsonText<CropYield>.FromJsonText(string text) =>
        text.EndsWith(NutrientWords.YieldsPerAcre[YieldUnit.Bushel], StringComparison.Ordinal)
            ? FromBushelsPerAcre(ExactText.Number(text, NutrientWords.YieldsPerAcre[YieldUnit.Bushel]))
            : FromTonsPerAcre(ExactText.Number(text, NutrientWords.YieldsPerAcre[YieldUnit.Ton]));
}
