using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>Effective neutralizing power in the pounds of one index, such as pounds of ENP or ENM. It is not a mass of
/// lime.</summary>
/// <remarks>Pounds of two indices are not added. There is no default: make it with <see cref="In"/>.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class NeutralizingPower
{
    private NeutralizingPower(double pounds, LimeIndex index)
    {
        Pounds = pounds;
        Index = index;
    }

    /// <summary>Gets the pounds in the terms of <see cref="Index"/>: pounds of ENP, ECCE, ENM, or of carbonate for an index in
    /// percent.</summary>
    public double Pounds { get; }

    /// <summary>Gets the index.</summary>
    public LimeIndex Index { get; }

    /// <summary>Power in a mass of a material.</summary>
    /// <param name="mass">Mass of material; finite, at least 0.</param>
    /// <param name="material">Material.</param>
    /// <param name="index">Index.</param>
    /// <returns>The power.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative, NaN or infinite mass.</exception>
    /// <exception cref="InvalidOperationException">The material's figure in the index is not known.</exception>
    /// <remarks>lb/ton index: mass x figure / 2000; percent index: mass x figure / 100.</remarks>
    public static NeutralizingPower In(Mass mass, LimingMaterial material, LimeIndex index)
    {
        ArgumentNullException.ThrowIfNull(material);
        ArgumentNullException.ThrowIfNull(index);
        double pounds = mass.Pounds;
        double per = index.Unit == "%" ? 100 : ExactUnits.PoundsPerShortTon;
        return new(LimeStrength.Power(Guard.AtLeast(pounds, 0, "lb", nameof(mass)), material.FigureIn(index).Value, per), index);
    }

    /// <summary>Adds power of the same index.</summary>
    /// <param name="other">Power.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="InvalidOperationException">The indices differ.</exception>
    public NeutralizingPower Plus(NeutralizingPower other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return other.Index == Index
            ? new(Pounds + other.Pounds, Index)
            : throw new InvalidOperationException($"Pounds of {Index.Name} and of {other.Index.Name} are not added.");
    }

    /// <summary>Text such as <c>2,262 lb of Missouri effective neutralizing material</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Pounds, 1)} lb of {Index.Name}";
}
