using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>The part of the eaten nutrients that grazing animals keep; the rest falls back on the plot.</summary>
public sealed class RetainedShare
{
    private static readonly Table<RetainedShare> Table = new("Nutrients/Data/retained-shares.csv", r => new RetainedShare(r));

    private RetainedShare(CsvRow row)
    {
        Id = row.Text("id");
        Title = row.Text("title");
        Nitrogen = Fraction.FromPercent(row.Number("nitrogen_pct"));
        Phosphate = Fraction.FromPercent(row.Number("phosphate_pct"));
        Potash = Fraction.FromPercent(row.Number("potash_pct"));
        SourceId = row.SourceId();
    }

    /// <summary>Gets every published set of shares.</summary>
    public static ImmutableArray<RetainedShare> All => Table.Rows;

    /// <summary>Gets the name to ask for.</summary>
    public string Id { get; }

    /// <summary>Gets the shares in words.</summary>
    public string Title { get; }

    /// <summary>Gets the share of nitrogen kept.</summary>
    public Fraction Nitrogen { get; }

    /// <summary>Gets the share of phosphate kept.</summary>
    public Fraction Phosphate { get; }

    /// <summary>Gets the share of potash kept.</summary>
    public Fraction Potash { get; }

    /// <summary>Gets the id of the source.</summary>
    public string SourceId { get; }

    /// <summary>Finds a set of shares by its name.</summary>
    /// <param name="id">Name such as <c>cattle</c>.</param>
    /// <returns>The shares.</returns>
    /// <exception cref="KeyNotFoundException">No set has this name.</exception>
    public static RetainedShare Named(string id) =>
        All.FirstOrDefault(s => s.Id == id)
        ?? throw new KeyNotFoundException(
            $"No retained shares are named '{id}'; there are {string.Join(", ", All.Select(s => s.Id))}."
        );

    internal Fraction? Of(PlantNutrient nutrient) =>
        nutrient switch
        {
            PlantNutrient.Nitrogen => Nitrogen,
            PlantNutrient.Phosphate => Phosphate,
            PlantNutrient.Potash => Potash,
            _ => null,
        };
}
