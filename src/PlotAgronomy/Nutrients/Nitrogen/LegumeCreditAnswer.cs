using System.Collections.Immutable;

namespace PlotAgronomy.Nutrients;

/// <summary>Nitrogen to subtract because a legume grew, or stands, on the plot.</summary>
public sealed class LegumeCreditAnswer : IWorkedResult
{
    internal LegumeCreditAnswer(LegumeCredit credit, ApplicationRate rate, IEnumerable<Finding> findings)
    {
        Credit = credit;
        Rate = rate;
        Findings = Finding.InOrder(findings);
    }

    /// <summary>Gets the published credit.</summary>
    public LegumeCredit Credit { get; }

    /// <summary>Gets the nitrogen to subtract.</summary>
    public ApplicationRate Rate { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings { get; }

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds => [Credit.SourceId];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            NutrientFormulas.AsPrinted(
                $"Legume credit, {Credit}: {Credit.Condition}",
                $"{NutrientFormulas.Number(Rate.PoundsPerAcre)} lb N/ac",
                Credit.SourceId,
                Credit.Status
            ),
        ];
}
