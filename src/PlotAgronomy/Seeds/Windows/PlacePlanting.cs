using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy;

/// <summary>What a place says of planting.</summary>
/// <example>
/// <code>
/// Console.WriteLine(Place.Find("North Carolina").PlantingRegion);
/// // South
/// </code>
/// </example>
public static class PlacePlanting
{
    private static readonly Lazy<IReadOnlyDictionary<Place, PlantingRegion>> Regions = Table.Keyed(
        "Seeds/Data/region-places.csv",
        PlaceOf,
        row => Seeds.PlantingRegion.Of(row, "region_id")
    );

    extension(Place place)
    {
        /// <summary>Gets the region by which planting dates are found; null where the place lies in several, or in
        /// none.</summary>
        public PlantingRegion? PlantingRegion => Regions.Value.GetValueOrDefault(place);
    }

    private static Place PlaceOf(CsvRow row)
    {
        string id = row.Text("place_id");
        return Place.TryFind(id, out var place, out string problem) ? place : throw row.Problem("place_id", problem);
    }
}
