using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>What leaves a plot with one unit of a crop, by one publication. Publications differ; none is averaged.</summary>
public sealed class RemovalFigure
{
    private static readonly Table<RemovalFigure> Table = new("Nutrients/Data/removal.csv", r => new RemovalFigure(r));

    private readonly ImmutableArray<(PlantNutrient Nutrient, double Low, double High)> poundsPerUnit;

    private RemovalFigure(CsvRow row)
    {
        Id = row.Text("id");
        Crop = row.Text("crop");
        Unit = row.Choice<YieldUnit>("unit");
        Part = row.Text("part");
        SourceIds = [.. row.SourceId().Split(';')];
        Status = row.Status();
        poundsPerUnit =
        [
            .. Range(row, PlantNutrient.Nitrogen, "n_low", "n_high"),
            .. Range(row, PlantNutrient.Phosphate, "phosphate_low", "phosphate_high"),
            .. Range(row, PlantNutrient.Potash, "potash_low", "potash_high"),
            .. Range(row, PlantNutrient.Sulfur, "sulfur", "sulfur"),
        ];
    }

    /// <summary>Gets every published figure.</summary>
    public static ImmutableArray<RemovalFigure> All => Table.Rows;

    /// <summary>Gets the name to ask for.</summary>
    public string Id { get; }

    /// <summary>Gets the crop in words.</summary>
    public string Crop { get; }

    /// <summary>Gets the unit of yield; for straw and stover the unit of the grain it came with.</summary>
    public YieldUnit Unit { get; }

    /// <summary>Gets the part of the crop: grain, hay, forage or stover.</summary>
    public string Part { get; }

    /// <summary>Gets the ids of the sources.</summary>
    public ImmutableArray<string> SourceIds { get; }

    /// <summary>Gets how well the figure is known.</summary>
    public DataStatus Status { get; }

    internal ImmutableArray<(PlantNutrient Nutrient, double Low, double High)> PoundsPerUnit => poundsPerUnit;

    /// <summary>Finds a figure by its name.</summary>
    /// <param name="id">Name such as <c>kentucky-alfalfa-hay</c>.</param>
    /// <returns>The figure.</returns>
    /// <exception cref="KeyNotFoundException">No figure has this name.</exception>
    public static RemovalFigure Named(string id) =>
        All.FirstOrDefault(f => f.Id == id)
        ?? throw new KeyNotFoundException(
            $"No removal figure is named '{id}'; there are {string.Join(", ", All.Select(f => f.Id))}."
        );

    /// <summary>Text such as <c>alfalfa hay, kentucky-alfalfa-hay</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Crop}, {Id}";

    private static IEnumerable<(PlantNutrient, double, double)> Range(
        CsvRow row,
        PlantNutrient nutrient,
        string low,
        string high
    ) => row.NumberOrNull(low) is { } from && row.NumberOrNull(high) is { } to ? [(nutrient, from, to)] : [];
}
