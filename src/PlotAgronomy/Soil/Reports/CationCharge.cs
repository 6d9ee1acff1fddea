using System.Globalization;
using UnitsNet;

namespace PlotAgronomy.Soil;

/// <summary>Charge of exchangeable cations, acidity or exchange capacity, in milliequivalents,
/// and what it is counted on.</summary>
/// <remarks>1 meq/100 g = 1 cmol of charge per kg. The default is zero per 100 g. Equality is exact.</remarks>
[JsonConverter(typeof(JsonTextConverter<CationCharge>))]
public readonly record struct CationCharge : IJsonText<CationCharge>
{
    private CationCharge(double milliequivalents, CationChargeBasis basis)
    {
        Milliequivalents = milliequivalents;
        Basis = basis;
    }

    /// <summary>Gets the milliequivalents per 100 g or per 100 cubic centimeters, as <see cref="Basis"/> says.</summary>
    public double Milliequivalents { get; }

    /// <summary>Gets what the charge is counted on.</summary>
    public CationChargeBasis Basis { get; }

    /// <summary>Creates a charge by weight from meq/100 g, which is also cmol of charge per kg.</summary>
    /// <param name="milliequivalents">Charge; finite, at least 0.</param>
    /// <returns>The charge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static CationCharge FromMilliequivalentsPer100Grams(double milliequivalents) =>
        new(Guard.AtLeast(milliequivalents, 0, "meq/100 g"), CationChargeBasis.Per100Grams);

    /// <summary>Creates a charge by volume from meq/100 cm3.</summary>
    /// <param name="milliequivalents">Charge; finite, at least 0.</param>
    /// <returns>The charge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static CationCharge FromMilliequivalentsPer100CubicCentimeters(double milliequivalents) =>
        new(Guard.AtLeast(milliequivalents, 0, "meq/100 cm3"), CationChargeBasis.Per100CubicCentimeters);

    internal static CationCharge Of(double milliequivalents, CationChargeBasis basis) =>
        new(Guard.AtLeast(milliequivalents, 0, SoilWords.For(basis)), basis);

    /// <summary>The same charge by weight: per volume divided by the weight of that volume.</summary>
    /// <param name="weightPerVolume">Weight per volume of the scooped soil (W/V on reports); above 0.</param>
    /// <returns>The charge in meq/100 g; unchanged when it is by weight already.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Weight per volume not above 0, NaN or infinite.</exception>
    public CationCharge ByWeight(Density weightPerVolume)
    {
        double gramsPerCubicCentimeter = weightPerVolume.GramsPerCubicCentimeter;
        Guard.Above(gramsPerCubicCentimeter, 0, "g/cm3", nameof(weightPerVolume));
        return Basis == CationChargeBasis.Per100Grams
            ? this
            : new(SoilUnitMath.ChargeByWeight(Milliequivalents, gramsPerCubicCentimeter), CationChargeBasis.Per100Grams);
    }

    /// <summary>Invariant text such as <c>8.2 meq/100 g</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Milliequivalents:0.###} {SoilWords.For(Basis)}");

    static string IJsonText<CationCharge>.ToJsonText(CationCharge value) =>
        $"{ExactText.Of(value.Milliequivalents)} {SoilWords.For(value.Basis)}";

    static CationCharge IJsonText<CationCharge>.FromJsonText(string text) =>
        text.EndsWith(SoilWords.For(CationChargeBasis.Per100Grams), StringComparison.Ordinal)
            ? Read(text, CationChargeBasis.Per100Grams)
            : Read(text, CationChargeBasis.Per100CubicCentimeters);

    private static CationCharge Read(string text, CationChargeBasis basis) =>
        Of(ExactText.Number(text, SoilWords.For(basis)), basis);
}
