using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>A rate counted in another lime, with the factor that was used.</summary>
[JsonConverter(typeof(NotForJson))]
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
                .Select(i => MemoryGate.FindingFor(i.Name, i.Origin))
        );

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [.. From.Basis.Origin.Sources.Union(Rate.Basis.Origin.Sources)];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            FactorLine.From(Rate.Basis.Origin),
            LimingFormulas
                .All["lime-in-other-lime"]
                .Line(
                    $"{LimeText.Tons(Rate.OfBasis.PoundsPerAcre)} ton/ac of {Rate.Basis.Name}",
                    ("what", "Rate"),
                    ("rate", LimeText.Tons(From.OfBasis.PoundsPerAcre)),
                    ("factor", FactorText)
                ),
        ];

    private string FactorText => Amounts.Print(Factor, 4);

    private WorkedLine FactorLine =>
        Through is null
            ? LimingFormulas
                .All["lime-strength-factor"]
                .Line(
                    FactorText,
                    ("what", "Factor"),
                    ("strength of its lime", $"{From.Basis.Figure}"),
                    ("strength of the other", $"{Rate.Basis.Figure}")
                )
            : LimingFormulas
                .All["lime-factor-through"]
                .Line(
                    FactorText,
                    ("material", Through.Name),
                    ("old lime", $"{From.Basis.Figure}"),
                    ("material in the old index", $"{Through.FigureIn(From.Basis.Figure!.Index)}"),
                    ("material in the new index", $"{Through.FigureIn(Rate.Basis.Figure!.Index)}"),
                    ("new lime", $"{Rate.Basis.Figure}")
                );

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
