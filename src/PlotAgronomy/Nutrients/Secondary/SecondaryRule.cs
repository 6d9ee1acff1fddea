using System.Collections.Immutable;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>A named rule for sulfur, magnesium or a trace nutrient on some crops. Rules disagree; each is asked by
/// name.</summary>
public sealed class SecondaryRule
{
    private static readonly Lazy<ImmutableArray<SecondaryRule>> Table = new(() =>
        [.. SecondaryRuleRow.All.GroupBy(r => r.Rule, StringComparer.Ordinal).Select(g => new SecondaryRule([.. g]))]
    );

    private readonly ImmutableArray<SecondaryRuleRow> rows;

    private SecondaryRule(ImmutableArray<SecondaryRuleRow> rows) => this.rows = rows;

    /// <summary>Gets every rule.</summary>
    public static ImmutableArray<SecondaryRule> All => Table.Value;

    /// <summary>Gets the name to ask for.</summary>
    public string Id => rows[0].Rule;

    /// <summary>Gets the rule in words.</summary>
    public string Title => rows[0].Title;

    /// <summary>Gets the nutrient.</summary>
    public PlantNutrient Nutrient => rows[0].Nutrient;

    /// <summary>Gets the crops it was made for, in words.</summary>
    public string Crops => rows[0].Crops;

    /// <summary>Gets the id of the source.</summary>
    public string SourceId => rows[0].SourceId;

    /// <summary>Gets how well its numbers are known.</summary>
    public DataStatus Status => rows[0].Status;

    internal ImmutableArray<SecondaryRuleRow> Rows => rows;

    /// <summary>Finds a rule by its name.</summary>
    /// <param name="id">Name such as <c>plot-boron</c>.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="KeyNotFoundException">No rule has this name.</exception>
    public static SecondaryRule Named(string id) =>
        All.FirstOrDefault(r => r.Id == id)
        ?? throw new KeyNotFoundException($"No rule is named '{id}'; there are {string.Join(", ", All.Select(r => r.Id))}.");

    /// <summary>Whether the rule was made for a kind.</summary>
    /// <param name="kind">Kind.</param>
    /// <returns>True when it was.</returns>
    public bool IsFor(CropKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return rows[0].Kinds.Any(k => k == "any" || k == kind.Id || k == $"group-{kind.Group}");
    }

    /// <summary>Answers for a report.</summary>
    /// <param name="report">Report.</param>
    /// <param name="setting">What else is known; null for nothing.</param>
    /// <returns>The rate and the reason; without a rate, and with a finding, when the report lacks what the rule asks.</returns>
    public SecondaryAnswer Answer(SoilReport report, SecondarySetting? setting = null)
    {
        ArgumentNullException.ThrowIfNull(report);
        return new SecondaryRuleRun(this, report, setting ?? SecondarySetting.Unknown).Run();
    }

    /// <summary>The rule's title.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Title;
}
