using System.Collections.Immutable;
using System.Globalization;

namespace PlotAgronomy.Blends;

/// <summary>How evenly a blend is spread over its kinds. Always say what was counted: by weight a blend looks quite unlike what
/// it is by seeds or by share of a full stand, and only the last says what its designer meant.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class Diversity : IWorkedResult
{
    private readonly Blend blend;

    private Diversity(Blend blend, BlendMeasure measure)
    {
        var shares = new double[blend.Parts.Length];
        for (int i = 0; i < shares.Length; i++)
        {
            shares[i] = ShareOf(blend.Parts[i], measure).Value;
        }

        this.blend = blend;
        Measure = measure;
        Shannon = BlendMath.Shannon(shares);
        Simpson = BlendMath.Simpson(shares);
    }

    /// <summary>Gets what was counted.</summary>
    public BlendMeasure Measure { get; }

    /// <summary>Gets the number of kinds.</summary>
    public int Kinds => blend.Parts.Length;

    /// <summary>Gets H = -sum of q ln q over the kinds' shares q, a pure number; 0 for one kind.</summary>
    public double Shannon { get; }

    /// <summary>Gets J = H / ln of the number of kinds, from 0 to 1; 1 for one kind, by definition.</summary>
    public double Evenness => BlendMath.Evenness(Shannon, Kinds);

    /// <summary>Gets 1 - sum of q squared: the chance that two picks are of two kinds.</summary>
    public double Simpson { get; }

    /// <summary>Gets exp(H): the number of equal kinds that would be as diverse.</summary>
    public double EffectiveKinds => BlendMath.EffectiveKinds(Shannon);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => [];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [];

    /// <summary>Diversity of a blend.</summary>
    /// <param name="blend">Blend.</param>
    /// <param name="measure">What is counted.</param>
    /// <returns>The indices.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown measure.</exception>
    public static Diversity For(Blend blend, BlendMeasure measure)
    {
        ArgumentNullException.ThrowIfNull(blend);
        Guard.Defined(measure);
        return new(blend, measure);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        DiversityWork.Of([.. blend.Parts.Select(p => (p.Kind, Share(p)))], Shannon, Simpson);

    /// <summary>The indices.</summary>
    /// <returns>Text such as <c>3.9 of 4 kinds by share of a full stand, evenness 0.98</c>.</returns>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{EffectiveKinds:0.#} of {Kinds} kinds by {BlendWords.Measures[Measure]}, evenness {Evenness:0.##}"
        );

    private double Share(BlendPart part) => ShareOf(part, Measure).Value;

    private static Fraction ShareOf(BlendPart part, BlendMeasure measure) =>
        measure switch
        {
            BlendMeasure.BulkWeight => part.ShareOfBulkWeight,
            BlendMeasure.LiveWeight => part.ShareOfLiveWeight,
            BlendMeasure.LiveSeeds => part.ShareOfLiveSeeds,
            _ => part.ShareOfStand,
        };
}
