using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>What leaves a plot with one unit of a crop, by one publication. Publications differ; none is averaged.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class RemovalFigure
{
    private const string OwnId = "own-figure";

    private static readonly Table<RemovalFigure> Table = new("Nutrients/Data/removal.csv", r => new RemovalFigure(r));

    private static readonly Catalog<RemovalFigure> Catalog = new("removal figure", () => Table.Rows, e => e.Id, e => e.Status);

    private RemovalFigure(
        string id,
        string crop,
        YieldUnit unit,
        string part,
        Origin origin,
        ImmutableArray<(PlantNutrient, double, double)> poundsPerUnit
    ) => (Id, Crop, Unit, Part, Origin, PoundsPerUnit) = (id, crop, unit, part, origin, poundsPerUnit);

    private RemovalFigure(CsvRow row)
    {
        Id = row.Text("id");
        Crop = row.Text("crop");
        Unit = row.Choice<YieldUnit>("yield_unit");
        Part = row.Text("part");
        Origin = row.Origin();
        PoundsPerUnit =
        [
            .. Range(row, PlantNutrient.Nitrogen, "nitrogen_low_lb", "nitrogen_high_lb"),
            .. Range(row, PlantNutrient.Phosphate, "phosphate_low_lb", "phosphate_high_lb"),
            .. Range(row, PlantNutrient.Potash, "potash_low_lb", "potash_high_lb"),
            .. Range(row, PlantNutrient.Sulfur, "sulfur_lb", "sulfur_lb"),
        ];
    }

    /// <summary>Gets the published figures that were seen in print, or are practice.</summary>
    public static ImmutableArray<RemovalFigure> All => Catalog.All;

    /// <summary>Gets the figures that are from memory; they answer only when asked for by name, with a finding.</summary>
    public static ImmutableArray<RemovalFigure> Unchecked => Catalog.Unchecked;

    /// <summary>Gets the id to ask for.</summary>
    public string Id { get; }

    /// <summary>Gets the crop in words.</summary>
    public string Crop { get; }

    /// <summary>Gets the unit of yield; for straw and stover the unit of the grain it came with.</summary>
    public YieldUnit Unit { get; }

    /// <summary>Gets the part of the crop: grain, hay, forage or stover.</summary>
    public string Part { get; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>Gets how well the figure is known.</summary>
    public DataStatus Status => Origin.Status;

    internal ImmutableArray<(PlantNutrient Nutrient, double Low, double High)> PoundsPerUnit { get; }

    /// <summary>Finds a figure by its id, checked or not.</summary>
    /// <param name="id">Id such as <c>kentucky-alfalfa-hay</c>.</param>
    /// <returns>The figure.</returns>
    /// <exception cref="KeyNotFoundException">No removal figure has this id; the message lists all.</exception>
    public static RemovalFigure Find(string id) => Catalog.Find(id);

    /// <summary>A figure of one's own, such as the analysis of one's own hay.</summary>
    /// <param name="crop">Crop in words.</param>
    /// <param name="unit">Unit of yield.</param>
    /// <param name="detail">Where it is from, such as <c>forage test of the first cut</c>.</param>
    /// <param name="poundsPerUnit">Nutrients, each once, and the pounds that leave with one unit of yield: N, P2O5, K2O and the
    /// like; finite, at least 0.</param>
    /// <returns>The figure.</returns>
    /// <exception cref="ArgumentException">No nutrient, one that stands twice, a blank text or an impossible number.</exception>
    /// <remarks>A forage test in percent of dry matter: pounds in a ton of hay = 20 x percent x part that is dry, of P and K
    /// times 2.29 and 1.20.</remarks>
    public static RemovalFigure Stated(
        string crop,
        YieldUnit unit,
        string detail,
        params IReadOnlyList<(PlantNutrient Nutrient, double Pounds)> poundsPerUnit
    )
    {
        Guard.NotBlank(crop);
        Guard.Defined(unit);
        Guard.NotEmpty(poundsPerUnit);
        if (poundsPerUnit.Select(n => n.Nutrient).Distinct().Count() < poundsPerUnit.Count)
        {
            throw new ArgumentException("A nutrient stands twice.", nameof(poundsPerUnit));
        }

        return new(
            OwnId,
            crop,
            unit,
            crop,
            Origin.FromUser(detail),
            [.. poundsPerUnit.Select(n => Stated(n.Nutrient, n.Pounds))]
        );
    }

    /// <summary>Text such as <c>alfalfa hay, kentucky-alfalfa-hay</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Crop}, {Id}";

    private static (PlantNutrient, double, double) Stated(PlantNutrient nutrient, double pounds)
    {
        Guard.AtLeast(pounds, 0, "lb per unit");
        return (Guard.Defined(nutrient), pounds, pounds);
    }

    private static IEnumerable<(PlantNutrient, double, double)> Range(
        CsvRow row,
        PlantNutrient nutrient,
        string low,
        string high
    ) => row.NumberOrNull(low) is { } from && row.NumberOrNull(high) is { } to ? [(nutrient, from, to)] : [];
}
