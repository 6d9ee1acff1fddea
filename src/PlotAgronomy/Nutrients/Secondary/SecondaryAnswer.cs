using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>What a rule for a secondary or trace nutrient says about one soil.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SecondaryAnswer : IWorkedResult
{
    private readonly SecondaryOutcome outcome;
    private readonly PlotSoil soil;
    private readonly SecondaryRequest request;

    internal SecondaryAnswer(SecondaryRule rule, PlotSoil soil, SecondaryRequest request, SecondaryOutcome outcome)
    {
        this.soil = soil;
        this.request = request;
        this.outcome = outcome;
        Rule = rule;
    }

    /// <summary>Gets the rule.</summary>
    public SecondaryRule Rule { get; }

    /// <summary>Gets the lower end of the rate; null when the rule prints none or could not answer.</summary>
    public ApplicationRate? Low => outcome.Low;

    /// <summary>Gets the upper end of the rate; null when the rule prints none or could not answer.</summary>
    public ApplicationRate? High => outcome.High;

    /// <summary>Gets whether the nutrient is needed; null when the rule could not answer.</summary>
    internal bool? IsNeeded => outcome.IsNeeded;

    /// <summary>Gets the reason or the advice printed with the rate.</summary>
    public string Reason => outcome.Reason;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings
    {
        get
        {
            var findings = new List<Finding>();
            new SecondaryRuleSum(Rule.Rows, soil, request, findings).Run();
            return Finding.InOrder(findings);
        }
    }

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => Rule.Origin.Sources;

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        Low is { } low && High is { } high
            ? [outcome.EquationRow is { } row ? EquationLine(row, high) : AsPrinted(low, high)]
            : [];

    /// <summary>The rule's equation; what it prints with a minus is held as a negative number.</summary>
    private WorkedLine EquationLine(SecondaryRuleRow row, ApplicationRate rate) =>
        NutrientFormulas
            .All[row.PerPh is null ? "kansas-zinc" : "tri-state-zinc-manganese"]
            .Line(
                $"{Amounts.Print(rate.PoundsPerAcre, 1)} lb/ac",
                ("what", $"{SoilWords.For(Rule.Nutrient)}, {Rule.Title}"),
                ("constant", NutrientFormulas.Number(Math.Abs(row.RateLow!.Value))),
                ("pounds a ppm", NutrientFormulas.Number(-row.PerTest ?? 0)),
                ("test", NutrientFormulas.Number(outcome.Test ?? 0)),
                ("pounds a pH unit", NutrientFormulas.Number(row.PerPh ?? 0)),
                ("pH", NutrientFormulas.Number(soil.WaterPh?.Value ?? 0))
            );

    private WorkedLine AsPrinted(ApplicationRate low, ApplicationRate high)
    {
        string at = outcome.Test is { } value ? $" at {NutrientFormulas.Number(value)}" : "";
        return NutrientFormulas.AsPrinted(
            $"{SoilWords.For(Rule.Nutrient)}, {Rule.Title}",
            $"{NutrientWords.Range(low, high)} lb/ac{at}: {Reason}",
            Rule.Origin
        );
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
