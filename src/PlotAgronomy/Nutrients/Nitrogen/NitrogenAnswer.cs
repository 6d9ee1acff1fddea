using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>Nitrogen by one rule, with its dressings.</summary>
public sealed class NitrogenAnswer : IWorkedResult
{
    internal NitrogenAnswer(
        NitrogenRule rule,
        ApplicationRate? low,
        ApplicationRate? high,
        ImmutableArray<NitrogenDose> doses,
        IEnumerable<Finding> findings
    )
    {
        Rule = rule;
        Low = low;
        High = high;
        Doses = doses;
        Findings = Finding.InOrder(
            rule.Status == DataStatus.Memory ? [MemoryGate.FindingFor(rule.Title, rule.SourceIds[0]), .. findings] : findings
        );
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
    public ImmutableArray<Finding> Findings { get; }

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds =>
        [.. Rule.SourceIds.Concat(Doses.Select(d => d.SourceId)).Distinct(StringComparer.Ordinal)];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. Sum(),
            .. Doses.Select(d =>
                NutrientFormulas.AsPrinted(
                    $"Dressing, {d.When}",
                    $"{NutrientWords.Range(d.Low, d.High)} lb/ac",
                    d.SourceId,
                    Rule.Status
                )
            ),
        ];

    /// <summary>The lines of the season's nitrogen; none without a figure.</summary>
    internal Func<IEnumerable<WorkedLine>> Sum { private get; init; } = () => [];
}
