using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>Nitrogen to subtract because a legume grew, or stands, on the plot.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LegumeCreditAnswer : IWorkedResult
{
    private readonly LegumeStand stand;

    internal LegumeCreditAnswer(LegumeCredit credit, LegumeStand stand)
    {
        this.stand = stand;
        Credit = credit;
        Rate = stand == LegumeStand.SownTogether ? ApplicationRate.Zero : credit.Low;
    }

    /// <summary>Gets the published credit.</summary>
    public LegumeCredit Credit { get; }

    /// <summary>Gets the nitrogen to subtract.</summary>
    public ApplicationRate Rate { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        stand == LegumeStand.SownTogether
            ? [FindingCatalog.Create(NutrientCodes.LegumeSownTogether, ("legume", Credit.Legume))]
            : Finding.InOrder([
                .. Credit.Status == DataStatus.Memory
                    ? [MemoryGate.FindingFor($"the credit for {Credit.Legume}", Credit.Origin)]
                    : Array.Empty<Finding>(),
                FindingCatalog.Create(
                    NutrientCodes.LegumeCreditLower,
                    ("legume", Credit.Legume),
                    ("credit", Amounts.Print(Rate.PoundsPerAcre, 4))
                ),
            ]);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => Credit.Origin.Sources;

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            NutrientFormulas.AsPrinted(
                $"Legume credit, {Credit}: {Credit.Condition}",
                $"{NutrientFormulas.Number(Rate.PoundsPerAcre)} lb N/ac",
                Credit.Origin
            ),
        ];

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
