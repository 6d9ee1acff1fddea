using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>A lime rate with its four labels: target pH, depth treated, the lime it is counted in, and the institution.</summary>
/// <remarks>Rates whose labels differ are not added or compared: bring them to one basis and depth first, by
/// <see cref="LimeRate.ConvertTo"/> and <see cref="AtDepth"/>. Pounds of ENP, ENM or ECCE are a basis too: they become
/// pounds of a product only through the product's own figure (<see cref="RateOf"/>).</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed partial class LimeRate
{
    private LimeRate(ApplicationRate ofBasis, double targetPh, Length depth, LimeBasis basis, Institution institution)
    {
        OfBasis = ofBasis;
        TargetPh = targetPh;
        Depth = depth;
        Basis = basis;
        Institution = institution;
    }

    /// <summary>Gets the rate of the lime named by <see cref="Basis"/>.</summary>
    public ApplicationRate OfBasis { get; }

    /// <summary>Whether it is no lime at all.</summary>
    internal bool IsNone => OfBasis == ApplicationRate.Zero;

    /// <summary>The rate in what it is counted in, such as <c>1,200 lb/ac of Missouri effective neutralizing
    /// material</c>.</summary>
    internal string AmountInWords =>
        Basis.IsInPounds
            ? $"{Amounts.Print(OfBasis.PoundsPerAcre, 0)} lb/ac of {Basis.Name}"
            : $"{LimeText.Tons(OfBasis.PoundsPerAcre)} ton/ac of {Basis.Name}";

    /// <summary>Gets the pH aimed at; for Missouri a salt pH, for all others in water.</summary>
    public double TargetPh { get; }

    /// <summary>Gets the depth of soil treated.</summary>
    public Length Depth { get; }

    /// <summary>Gets the lime it is counted in.</summary>
    public LimeBasis Basis { get; }

    /// <summary>Gets the institution whose rate it is.</summary>
    public Institution Institution { get; }

    /// <summary>Labels a rate.</summary>
    /// <param name="ofBasis">Rate of the lime named by the basis.</param>
    /// <param name="targetPh">pH aimed at; from 4 to 9.</param>
    /// <param name="depth">Depth of soil treated; above 0, at most 24 inches.</param>
    /// <param name="basis">Lime it is counted in.</param>
    /// <param name="institution">Institution; not blank.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static LimeRate FromBasis(
        ApplicationRate ofBasis,
        double targetPh,
        Length depth,
        LimeBasis basis,
        Institution institution
    )
    {
        ArgumentNullException.ThrowIfNull(basis);
        ArgumentNullException.ThrowIfNull(institution);
        return new(ofBasis, LimeLimits.TargetPh(targetPh, nameof(targetPh)), CheckDepth(depth), basis, institution);
    }

    /// <summary>The rate for another depth of soil, to the same pH.</summary>
    /// <param name="depth">Depth really treated; above 0, at most 24 inches.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A depth outside its range.</exception>
    /// <remarks>rate x depth / depth of the rate (PRACTICE; Iowa and Kansas write it into their equations).</remarks>
    public LimeRate AtDepth(Length depth)
    {
        double from = Depth.Inches;
        double to = CheckDepth(depth).Inches;
        return new(
            ApplicationRate.FromPoundsPerAcre(LimeSums.AtDepth(OfBasis.PoundsPerAcre, to, from)),
            TargetPh,
            depth,
            Basis,
            Institution
        )
        {
            Silent = Silent,
        };
    }

    /// <summary>Pounds of a real material that do the same.</summary>
    /// <param name="material">Material as bought.</param>
    /// <returns>Rate of the material.</returns>
    /// <exception cref="InvalidOperationException">The material's figure in the index of this basis is not known, or it
    /// neutralizes nothing.</exception>
    /// <remarks>rate x figure of the basis / figure of the material, both in the institution's own index. A lime whose strength
    /// the source does not print counts pound for pound.</remarks>
    public ApplicationRate RateOf(LimingMaterial material)
    {
        ArgumentNullException.ThrowIfNull(material);
        return ApplicationRate.FromPoundsPerAcre(LimeSums.InOtherLime(OfBasis.PoundsPerAcre, FactorFor(material)));
    }

    /// <summary>Adds a rate with the same four labels.</summary>
    /// <param name="other">Rate.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="InvalidOperationException">A label differs.</exception>
    internal LimeRate Plus(LimeRate other)
    {
        RequireSameLabels(other);
        return Relabelled(OfBasis.PoundsPerAcre + other.OfBasis.PoundsPerAcre, Basis);
    }

    /// <summary>Compares with a rate on the same basis and depth.</summary>
    /// <param name="other">Rate.</param>
    /// <returns>This rate divided by the other, a pure number.</returns>
    /// <exception cref="InvalidOperationException">Basis or depth differs.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The other rate is zero.</exception>
    public double RatioTo(LimeRate other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (other.Basis != Basis || !SameDepth(other))
        {
            throw new InvalidOperationException(
                $"Rates on different labels are not compared: {this} against {other}. Convert one first."
            );
        }

        return OfBasis / other.OfBasis;
    }

    /// <summary>Invariant text such as <c>2.65 ton/ac of 100-score lime to pH 6.4, 6 in deep (Oregon)</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string target = Silent.HasFlag(LimeLabels.Target) ? "" : $" to pH {LimeText.Ph(TargetPh)}";
        string deep = Silent.HasFlag(LimeLabels.Depth) ? "" : $", {LimeText.Inches(Depth)} in deep";
        return $"{AmountInWords}{target}{deep} ({Institution})";
    }

    /// <summary>The labels that its source does not print: what stands for them is not told, and nothing is scaled by
    /// it.</summary>
    internal LimeLabels Silent { get; private init; }

    internal LimeRate SilentOn(LimeLabels labels) => new(OfBasis, TargetPh, Depth, Basis, Institution) { Silent = labels };

    internal LimeRate With(ApplicationRate ofBasis) => Relabelled(ofBasis.PoundsPerAcre, Basis);

    internal double FactorFor(LimingMaterial material) =>
        !material.Neutralizes
            ? throw new InvalidOperationException($"{material.Name} neutralizes nothing: no amount of it is lime.")
        : IndexFor(material) is { } index ? LimeSums.StrengthFactor(Basis.Figure!.Value, Effective(material, index))
        : material.PerOrdinaryLime
            ?? throw new InvalidOperationException(
                $"{material.Name} is stronger than limestone: {LimingMaterial.EquivalentAsked}"
            );

    /// <summary>The index a material is held against this lime by; null where it counts as ordinary lime does.</summary>
    internal LimeIndex? IndexFor(LimingMaterial material) =>
        Basis.Figure is not { } figure || (Basis.IsOrdinaryLime && material.FindFigure(figure.Index) is null)
            ? null
            : figure.Index;

    /// <summary>Why no amount of a material can be told for this rate; null where it can.</summary>
    internal string? WhyNotCounted(LimingMaterial material) =>
        !material.Neutralizes ? "it neutralizes nothing"
        : IndexFor(material) is not { } index
            ? (material.PerOrdinaryLime is null ? $"it is stronger than limestone: {LimingMaterial.EquivalentAsked}" : null)
        : !material.TryFigureIn(index, out var figure, out string problem) ? problem
        : figure!.Value > 0 ? null
        : "it has no effect in this index";

    internal static double Effective(LimingMaterial material, LimeIndex index)
    {
        double value = material.FigureIn(index).Value;
        return value > 0
            ? value
            : throw new InvalidOperationException($"{material.Name} has no effect in {index.Name}: no amount of it is lime.");
    }

    private static Length CheckDepth(Length depth)
    {
        double inches = depth.Inches;
        LimeLimits.Depth(inches, nameof(depth));
        return depth;
    }

    internal LimeRate Relabelled(double poundsPerAcre, LimeBasis basis) =>
        new(ApplicationRate.FromPoundsPerAcre(poundsPerAcre), TargetPh, Depth, basis, Institution) { Silent = Silent };

    private bool SameDepth(LimeRate other)
    {
        double mine = Depth.Inches;
        double theirs = other.Depth.Inches;
        return Tolerance.AreEqual(mine, theirs);
    }

    private void RequireSameLabels(LimeRate other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (
            other.Basis != Basis
            || !SameDepth(other)
            || !Tolerance.AreEqual(other.TargetPh, TargetPh)
            || other.Institution != Institution
        )
        {
            throw new InvalidOperationException(
                $"Rates on different labels are not added: {this} and {other}. Convert one first."
            );
        }
    }
}
