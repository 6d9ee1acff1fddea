using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>A named rule for how much nitrogen a crop or plot gets, and in how many dressings.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed partial class NitrogenRule
{
    private static readonly Table<NitrogenRule> Table = new("Nutrients/Data/nitrogen-rules.csv", r => new NitrogenRule(r));

    private static readonly Catalog<NitrogenRule> Catalog = new("nitrogen rule", () => Table.Rows, r => r.Id, r => r.Status);

    private readonly double? low;
    private readonly double? high;
    private readonly NitrogenYields yields;
    private readonly NitrogenSplit split;
    private readonly string? withLegumesId;

    private NitrogenRule(CsvRow row)
    {
        Id = row.Text("id");
        Title = row.Text("title");
        Crops = row.Text("crops");
        Form = row.Choice<NitrogenForm>("form");
        var unit = row.ChoiceOrNull<PrintedYieldUnit>("yield_unit");
        YieldUnit = unit switch
        {
            null => null,
            PrintedYieldUnit.Bushel => Nutrients.YieldUnit.Bushel,
            _ => Nutrients.YieldUnit.Ton,
        };
        low = row.NumberOrNull("nitrogen_low_lb");
        high = row.NumberOrNull("nitrogen_high_lb");
        Condition = row.TextOrNull("condition");
        withLegumesId = row.TextOrNull("with_legumes_id");
        Origin = row.Origin();
        yields = NitrogenYields.Of(Id, isInPounds: unit == PrintedYieldUnit.Pound);
        split = NitrogenSplit.Of(Id);
    }

    /// <summary>Unit of a rule's table; pounds are asked for in tons.</summary>
    private enum PrintedYieldUnit
    {
        Bushel,
        Ton,
        Pound,
    }

    /// <summary>Gets the rules that were seen in print, or are practice.</summary>
    public static ImmutableArray<NitrogenRule> All => Catalog.All;

    /// <summary>Gets the rules that are from memory; they answer only when asked for by name, with a finding.</summary>
    internal static ImmutableArray<NitrogenRule> Unchecked => Catalog.Unchecked;

    /// <summary>Gets the starter for a legume whose inoculation is unsure, common practice.</summary>
    public static NitrogenRule UninoculatedLegume => Find("uninoculated-legume");

    /// <summary>Gets the id to ask for.</summary>
    public string Id { get; }

    /// <summary>Gets the rule in words.</summary>
    public string Title { get; }

    /// <summary>Gets the crops it was made for, in words.</summary>
    public string Crops { get; }

    /// <summary>Gets how it is stated.</summary>
    internal NitrogenForm Form { get; }

    /// <summary>Gets the unit of the yield it asks for, or null when it asks for none.</summary>
    public YieldUnit? YieldUnit { get; }

    /// <summary>Gets the condition it is printed with, or null.</summary>
    public string? Condition { get; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>The rule for a mixture of the crop with legumes; null where the rule is the same there.</summary>
    internal NitrogenRule? WithLegumes => withLegumesId is null ? null : Find(withLegumesId);

    /// <summary>Whether its figure is for the whole of a mixture with legumes, and not for the crop alone.</summary>
    internal bool IsForMixture => Table.Rows.Any(r => r.withLegumesId == Id);

    /// <summary>Gets how well the rule is known.</summary>
    public DataStatus Status => Origin.Status;

    /// <summary>Finds a rule by its id, checked or not.</summary>
    /// <param name="id">Id such as <c>mississippi-grain-plot</c>.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="KeyNotFoundException">No nitrogen rule has this id; the message lists all.</exception>
    public static NitrogenRule Find(string id) => Catalog.Find(id);

    /// <summary>Finds a rule by its id, checked or not.</summary>
    /// <param name="id">Id such as <c>mississippi-grain-plot</c>; may be null.</param>
    /// <param name="rule">The rule, or null.</param>
    /// <param name="problem">Why there is none, with a list of all ids; empty when there is one.</param>
    /// <returns>True when there is one.</returns>
    internal static bool TryFind(string? id, [NotNullWhen(true)] out NitrogenRule? rule, out string problem) =>
        Catalog.TryFind(id, out rule, out problem);

    /// <summary>The rule's title.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Title;

    internal ImmutableArray<NitrogenDose> Split(double lowPounds, double highPounds) => split.Of(lowPounds, highPounds);

    /// <summary>Why there is no figure for a yield that lies outside the table.</summary>
    internal Finding Outside(CropYield yield) => yields.Outside(Title, yield);

    /// <summary>Pounds before anything is taken off; null without a yield, or outside the table.</summary>
    private (double Low, double High)? Pounds(CropYield? yield) =>
        Form == NitrogenForm.Fixed ? (low!.Value, high!.Value)
        : yield is not { } given ? null
        : Form == NitrogenForm.PerUnit
            ? (SystemMath.ByYield(low!.Value, given.PerAcre), SystemMath.ByYield(high!.Value, given.PerAcre))
        : yields.PoundsFor(given) is { } pounds ? (pounds, pounds)
        : null;

    /// <summary>What the rule prints or works out, and what a printed condition takes off it.</summary>
    internal IEnumerable<WorkedLine> Lines(CropYield? yield, double taken)
    {
        var (lowPounds, highPounds) = Pounds(yield)!.Value;
        string answer = $"{NutrientWords.Range(lowPounds, highPounds, 1)} lb/ac";
        yield return Gross(yield, answer).From(Origin.FirstSource);
        if (taken > 0)
        {
            double from = NitrogenMath.AfterCredit(lowPounds, taken);
            double to = NitrogenMath.AfterCredit(highPounds, taken);
            yield return NutrientFormulas
                .All["nitrogen-less-reduction"]
                .Line(
                    $"{NutrientWords.Range(from, to, 1)} lb/ac",
                    ("rule", Title),
                    ("nitrogen", NutrientWords.Range(lowPounds, highPounds)),
                    ("taken off", NutrientFormulas.Number(taken))
                );
        }
    }

    private WorkedLine Gross(CropYield? yield, string answer)
    {
        if (yield is not { } given || Form == NitrogenForm.Fixed)
        {
            return NutrientFormulas.All["rate-as-printed"].Line(answer, ("what", $"N, {Title}"));
        }

        return Form == NitrogenForm.YieldTable
            ? yields.Line(Title, given, answer)
            : NutrientFormulas
                .All["nitrogen-by-yield"]
                .Line(
                    answer,
                    ("rule", Title),
                    ("pounds a unit", NutrientWords.Range(low ?? 0, high ?? 0)),
                    ("yield", given.ToString())
                );
    }
}
