using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>One method's answer in a comparison, as it stands and on the common basis.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeMethodAnswer
{
    private readonly Length depth;
    private readonly LimingMaterial material;
    private readonly bool isComparable;

    internal LimeMethodAnswer(LimeNeed need, Length depth, LimingMaterial material)
    {
        this.depth = depth;
        this.material = material;
        Need = need;
        var rate = need.Rate;
        isComparable = rate?.Basis.Figure is { } figure && HasEffect(material, figure.Index);
        Common = OnCommonBasis(rate);
    }

    /// <summary>Gets the method's own answer with its own labels.</summary>
    public LimeNeed Need { get; }

    /// <summary>Gets the method.</summary>
    public LimeMethod Method => Need.Method;

    /// <summary>Gets the method's target closest to the one asked for.</summary>
    public double TargetPh => Need.TargetPh;

    /// <summary>Gets the rate of the common material for the common depth; null when there is none (the need's findings or
    /// <see cref="WhyNot"/> say why).</summary>
    public ApplicationRate? Common { get; }

    /// <summary>Gets the same for a reading higher by the reading error, or null.</summary>
    public ApplicationRate? CommonLowest => OnCommonBasis(Need.Lowest);

    /// <summary>Gets the same for a reading lower by the reading error, or null.</summary>
    public ApplicationRate? CommonHighest => OnCommonBasis(Need.Highest);

    /// <summary>Gets why the method's rate cannot be put on the common basis, or null.</summary>
    public string? WhyNot =>
        Need.Rate is not { } rate ? null
        : rate.Basis.Figure is not { } figure ? "the strength of its lime is not printed."
        : HasEffect(material, figure.Index) ? null
        : material.TryFigureIn(figure.Index, out _, out string problem)
            ? $"{material.Name} has no effect in {figure.Index.Name}: no amount of it is lime."
        : problem;

    /// <summary>What the method says of itself. That its numbers are from memory is in its status.</summary>
    internal ImmutableArray<Finding> Remarks => [.. Need.Findings.Where(f => f.Code != ReferenceCodes.FromMemory)];

    private static bool HasEffect(LimingMaterial material, LimeIndex index) =>
        material.Neutralizes && material.FindFigure(index) is { Value: > 0 };

    private ApplicationRate? OnCommonBasis(LimeRate? rate) => isComparable ? rate?.AtDepth(depth).RateOf(material) : null;

    /// <summary>What the method answers.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Need.ToString();
}
