using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Calendar;

/// <summary>The middle of a state, near enough for sun and evaporation.</summary>
internal static class PlacePoint
{
    private static readonly Lazy<IReadOnlyDictionary<string, GeoPoint>> Points = Table.Keyed(
        "Calendar/Data/place-points.csv",
        row => row.Text("place_id"),
        row =>
        {
            _ = row.Origin();
            return GeoPoint.FromDegrees(row.Number("latitude_degrees"), row.Number("longitude_degrees"));
        }
    );

    /// <summary>The place itself, what the document is for, or the middle of the state with a remark; null where none is
    /// known.</summary>
    internal static (GeoPoint Point, Finding? Remark)? Of(GeoPoint? where, WeatherForecast? forecast, Place? place)
    {
        if ((where ?? forecast?.Place) is { } point)
        {
            return (point, null);
        }

        return place is not null && Points.Value.TryGetValue(place.Id, out var middle)
            ? (middle, FindingCatalog.Create(CalendarCodes.PlaceTaken, ("place", $"the middle of {place.Name}")))
            : null;
    }
}
