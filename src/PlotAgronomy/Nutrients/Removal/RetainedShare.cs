using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>The part of the eaten nutrients that grazing animals keep; the rest falls back on the plot.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class RetainedShare
{
    private static readonly Table<RetainedShare> Table = new("Nutrients/Data/retained-shares.csv", r => new RetainedShare(r));

    private static readonly Catalog<RetainedShare> Catalog = new(
        "set of retained shares",
        () => Table.Rows,
        e => e.Id,
        e => e.Status
    );

    private RetainedShare(CsvRow row)
    {
        Id = row.Text("id");
        Title = row.Text("title");
        Nitrogen = Fraction.FromPercent(row.Number("nitrogen_pct"));
        Phosphate = Fraction.FromPercent(row.Number("phosphate_pct"));
        Potash = Fraction.FromPercent(row.Number("potash_pct"));
        Origin = row.Origin();
    }

    /// <summary>Gets the sets of shares that were seen in print, or are practice.</summary>
    public static ImmutableArray<RetainedShare> All => Catalog.All;

    /// <summary>Gets the sets of shares that are from memory; they answer only when asked for by name, with a finding.</summary>
    internal static ImmutableArray<RetainedShare> Unchecked => Catalog.Unchecked;

    /// <summary>Gets the id to ask for.</summary>
    public string Id { get; }

    /// <summary>Gets the shares in words.</summary>
    public string Title { get; }

    /// <summary>Gets the share of nitrogen kept.</summary>
    public Fraction Nitrogen { get; }

    /// <summary>Gets the share of phosphate kept.</summary>
    public Fraction Phosphate { get; }

    /// <summary>Gets the share of potash kept.</summary>
    public Fraction Potash { get; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>Gets how well the shares are known.</summary>
    public DataStatus Status => Origin.Status;

    /// <summary>Finds a set of shares by its id, checked or not.</summary>
    /// <param name="id">Id such as <c>cattle</c>.</param>
    /// <returns>The shares.</returns>
    /// <exception cref="KeyNotFoundException">No set of retained shares has this id; the message lists all.</exception>
    public static RetainedShare Find(string id) => Catalog.Find(id);

    internal Fraction? Of(PlantNutrient nutrient) =>
        nutrient switch
        {
            PlantNutrient.Nitrogen => Nitrogen,
            PlantNutrient.Phosphate => Phosphate,
            PlantNutrient.Potash => Potash,
            _ => null,
        };

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Id;
}
