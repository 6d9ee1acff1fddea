using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>A named rule for sulfur, magnesium or a trace nutrient on some crops. Rules disagree; each is asked by
/// name.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed partial class SecondaryRule
{
    private static readonly Catalog<SecondaryRule> Catalog = new(
        "rule for a secondary or trace nutrient",
        () => SecondaryRuleRow.All.GroupBy(r => r.RuleId, StringComparer.Ordinal).Select(g => new SecondaryRule([.. g])),
        r => r.Id,
        r => r.Status
    );

    private SecondaryRule(ImmutableArray<SecondaryRuleRow> rows) => Rows = rows;

    /// <summary>Gets the rules that were seen in print, or are practice.</summary>
    public static ImmutableArray<SecondaryRule> All => Catalog.All;

    /// <summary>Gets the rules that are from memory; they answer only when asked for by name, with a finding.</summary>
    internal static ImmutableArray<SecondaryRule> Unchecked => Catalog.Unchecked;

    internal static ImmutableArray<SecondaryRule> Everything => Catalog.Everything;

    /// <summary>Gets the careful boron rule for plots, common practice.</summary>
    public static SecondaryRule PlotBoron => Find("plot-boron");

    /// <summary>Gets Wisconsin's sulfur on alfalfa, by a tissue test.</summary>
    internal static SecondaryRule WisconsinSulfurAlfalfa => Find("wisconsin-sulfur-alfalfa");

    /// <summary>Gets North Carolina's zinc, by the index.</summary>
    internal static SecondaryRule NorthCarolinaZinc => Find("north-carolina-zinc");

    /// <summary>Gets the id to ask for.</summary>
    public string Id => Rows[0].RuleId;

    /// <summary>Gets the rule in words.</summary>
    public string Title => Rows[0].Title;

    /// <summary>Gets the nutrient.</summary>
    public PlantNutrient Nutrient => Rows[0].Nutrient;

    /// <summary>Gets the crops it was made for, in words.</summary>
    internal string Crops => Rows[0].Crops;

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin => Rows[0].Origin;

    /// <summary>Gets how well its numbers are known.</summary>
    public DataStatus Status => Rows[0].Status;

    internal ImmutableArray<SecondaryRuleRow> Rows { get; }

    /// <summary>Finds a rule by its id, checked or not.</summary>
    /// <param name="id">Id such as <c>plot-boron</c>.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="KeyNotFoundException">No rule has this id; the message lists all.</exception>
    public static SecondaryRule Find(string id) => Catalog.Find(id);

    /// <summary>Whether the rule was made for a kind.</summary>
    /// <param name="kind">Kind.</param>
    /// <returns>True when it was.</returns>
    public bool IsFor(CropKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return Rows[0].KindIds.Any(k => k == "any" || k == kind.Id || k == KindGroups.IdOf(kind));
    }

    /// <summary>The rule's title.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Title;
}
