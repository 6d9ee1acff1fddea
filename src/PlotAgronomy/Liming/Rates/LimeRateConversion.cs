using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>A rate counted in another lime, with the factor that was used.</summary>
public sealed class LimeRateConversion : IWorkedResult
{
    internal LimeRateConversion(LimeRate from, LimeRate rate, double factor, LimingMaterial? through)
    {
        From = from;
        Rate = rate;
        Factor = factor;
        Through = through;
    }

    /// <summary>Gets the rate before.</summary>
    public LimeRate From { get; }

    /// <summary>Gets the rate after.</summary>
    public LimeRate Rate { get; }

    /// <summary>Gets the factor, a pure number.</summary>
    public double Factor { get; }

    /// <summary>Gets the material the conversion went through, or null when both limes are rated in one index.</summary>
    public LimingMaterial? Through { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(
            new[] { From.Basis.Figure!.Index, Rate.Basis.Figure!.Index }
                .Where(i => Through is { IsPureCarbonate: false } && i.Status == DataStatus.Memory)
                .Select(i => MemoryGate.FindingFor(i.Name, i.SourceId))
        );

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds => [.. new[] { From.Basis.SourceId, Rate.Basis.SourceId }.Distinct()];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            new(
                "Factor",
                Through is null
                    ? "strength of the old lime / strength of the new lime"
                    : $"through {Through.Name}: (old lime / material) x (material / new lime)",
                Through is null
                    ? $"{From.Basis.Figure} / {Rate.Basis.Figure} = {Amounts.Print(Factor, 4)}"
                    : $"({From.Basis.Figure} / {Through.FigureIn(From.Basis.Figure!.Index)}) x "
                        + $"({Through.FigureIn(Rate.Basis.Figure!.Index)} / {Rate.Basis.Figure}) = {Amounts.Print(Factor, 4)}",
                Rate.Basis.SourceId
            ),
            new(
                "Rate",
                "old rate x factor",
                $"{LimeText.Tons(From.OfBasis.PoundsPerAcre)} x {Amounts.Print(Factor, 4)} = "
                    + $"{LimeText.Tons(Rate.OfBasis.PoundsPerAcre)} ton/ac of {Rate.Basis.Name}"
            ),
        ];
}
