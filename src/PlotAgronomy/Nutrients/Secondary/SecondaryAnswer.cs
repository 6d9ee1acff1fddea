using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>What a rule for a secondary or trace nutrient says about one report.</summary>
public sealed class SecondaryAnswer : IWorkedResult
{
    private readonly double? test;

    internal SecondaryAnswer(
        SecondaryRule rule,
        ApplicationRate? low,
        ApplicationRate? high,
        bool? isNeeded,
        string reason,
        double? test,
        IEnumerable<Finding> findings
    )
    {
        Rule = rule;
        Low = low;
        High = high;
        IsNeeded = isNeeded;
        Reason = reason;
        this.test = test;
        Findings = Finding.InOrder(findings);
    }

    /// <summary>Gets the rule.</summary>
    public SecondaryRule Rule { get; }

    /// <summary>Gets the lower end of the rate; null when the rule prints none or could not answer.</summary>
    public ApplicationRate? Low { get; }

    /// <summary>Gets the upper end of the rate; null when the rule prints none or could not answer.</summary>
    public ApplicationRate? High { get; }

    /// <summary>Gets whether the nutrient is needed; null when the rule could not answer.</summary>
    public bool? IsNeeded { get; }

    /// <summary>Gets the reason or the advice printed with the rate.</summary>
    public string Reason { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings { get; }

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds => [Rule.SourceId];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => Low is { } low && High is { } high ? [Equation ?? AsPrinted(low, high)] : [];

    /// <summary>The line of the equation that gave the rate; null for a rate that is printed.</summary>
    internal WorkedLine? Equation { private get; init; }

    private WorkedLine AsPrinted(ApplicationRate low, ApplicationRate high)
    {
        string at = test is { } value ? $" at {NutrientFormulas.Number(value)}" : "";
        return NutrientFormulas.AsPrinted(
            $"{SoilWords.For(Rule.Nutrient)}, {Rule.Title}",
            $"{NutrientWords.Range(low, high)} lb/ac{at}: {Reason}",
            Rule.SourceId,
            Rule.Status
        );
    }
}
