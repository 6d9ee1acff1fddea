using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>Nitrogen that an earlier or standing legume leaves to what grows there next, by one publication.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed partial class LegumeCredit
{
    private static readonly Table<LegumeCredit> Table = new("Nutrients/Data/legume-credits.csv", r => new LegumeCredit(r));

    private static readonly Catalog<LegumeCredit> Catalog = new("legume credit", () => Table.Rows, e => e.Id, e => e.Status);

    private LegumeCredit(CsvRow row)
    {
        Id = row.Text("id");
        Legume = row.Text("legume");
        Institution = row.Institution();
        Low = ApplicationRate.FromPoundsPerAcre(row.Number("nitrogen_low_lb_per_ac"));
        High = ApplicationRate.FromPoundsPerAcre(row.Number("nitrogen_high_lb_per_ac"));
        Condition = row.Text("condition");
        IsForExistingStand = row.YesOrNo("existing_stand");
        Origin = row.Origin();
    }

    /// <summary>Gets the published credits that were seen in print, or are practice.</summary>
    public static ImmutableArray<LegumeCredit> All => Catalog.All;

    /// <summary>Gets the credits that are from memory; they answer only when asked for by name, with a finding.</summary>
    internal static ImmutableArray<LegumeCredit> Unchecked => Catalog.Unchecked;

    /// <summary>Gets all credits, checked or not: a plan may name any.</summary>
    internal static ImmutableArray<LegumeCredit> Everything => Catalog.Everything;

    /// <summary>Gets the id to ask for.</summary>
    public string Id { get; }

    /// <summary>Gets the legume.</summary>
    public string Legume { get; }

    /// <summary>Gets the state or program.</summary>
    public Institution Institution { get; }

    /// <summary>Gets the lower figure, the one that is credited.</summary>
    public ApplicationRate Low { get; }

    /// <summary>Gets the upper figure.</summary>
    public ApplicationRate High { get; }

    /// <summary>Gets the condition it is printed with.</summary>
    public string Condition { get; }

    /// <summary>Gets whether the figure is for a legume that still stands; else for one that grew before.</summary>
    public bool IsForExistingStand { get; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>Gets how well the figure is known.</summary>
    public DataStatus Status => Origin.Status;

    /// <summary>Finds a credit by its id, checked or not.</summary>
    /// <param name="id">Id such as <c>tennessee-cover</c>.</param>
    /// <returns>The credit.</returns>
    /// <exception cref="KeyNotFoundException">No legume credit has this id; the message lists all.</exception>
    public static LegumeCredit Find(string id) => Catalog.Find(id);

    /// <summary>Finds a credit by its id, checked or not.</summary>
    /// <param name="id">Id such as <c>tennessee-cover</c>; may be null.</param>
    /// <param name="credit">The credit, or null.</param>
    /// <param name="problem">Why there is none, with a list of all ids; empty when there is one.</param>
    /// <returns>True when there is one.</returns>
    internal static bool TryFind(string? id, [NotNullWhen(true)] out LegumeCredit? credit, out string problem) =>
        Catalog.TryFind(id, out credit, out problem);

    /// <summary>Text such as <c>alfalfa, Kansas</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Legume}, {Institution}";
}
