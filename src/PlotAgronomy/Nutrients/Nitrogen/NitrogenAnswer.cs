using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>Nitrogen by one rule, with its dressings.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class NitrogenAnswer : IWorkedResult
{
    private readonly CropYield? yield;

    internal NitrogenAnswer(
        NitrogenRule rule,
        CropYield? yield,
        ApplicationRate? low,
        ApplicationRate? high,
        ImmutableArray<NitrogenDose> doses
    )
    {
        this.yield = yield;
        Rule = rule;
        Low = low;
        High = high;
        Doses = doses;
    }

    /// <summary>Gets the rule.</summary>
    public NitrogenRule Rule { get; }

    /// <summary>Gets the lower end of the season's nitrogen, or null when the rule gives no figure.</summary>
    public ApplicationRate? Low { get; }

    /// <summary>Gets the upper end of the season's nitrogen, or null when the rule gives no figure.</summary>
    public ApplicationRate? High { get; }

    /// <summary>Gets the dressings, in the order in which they are spread; together they are the season's nitrogen.</summary>
    public ImmutableArray<NitrogenDose> Doses { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [.. Rule.Origin.Sources.Concat(Doses.Select(d => d.Source)).Distinct()];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. Low is null ? [] : Rule.Lines(yield, PoundsTakenOff),
            .. Doses.Select(d =>
                NutrientFormulas
                    .All["nitrogen-dressing"]
                    .Line($"{NutrientWords.Range(d.Low, d.High)} lb/ac", ("when", d.When))
                    .From(new Origin(d.Source, Rule.Status))
            ),
        ];

    /// <summary>Pounds that a printed condition took off.</summary>
    internal double PoundsTakenOff { get; init; }

    /// <summary>Numbers from memory, why there is no figure, a dressing that is too large.</summary>
    private IEnumerable<Finding> Remarks()
    {
        if (Rule.Status == DataStatus.Memory)
        {
            yield return MemoryGate.FindingFor(Rule.Title, Rule.Origin.FirstSource);
        }

        if (High is not { } high)
        {
            yield return yield is { } given
                ? Rule.Outside(given)
                : FindingCatalog.Create(NutrientCodes.NitrogenYieldNeeded, ("rule", Rule.Title));
            yield break;
        }

        double largest = (Doses.IsEmpty ? high : Doses.Max(d => d.High)).PoundsPerAcre;
        if (largest > NutrientConstants.All["largest-single-dose"])
        {
            yield return FindingCatalog.Create(NutrientCodes.NitrogenSingleDose, ("rate", Amounts.Print(largest, 1)));
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
