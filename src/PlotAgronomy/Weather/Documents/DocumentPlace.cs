using PlotAgronomy.Land;

namespace PlotAgronomy.Weather;

/// <summary>The place that a document of GeoJSON is for: its point, or the middle of the corners of its cell.</summary>
internal static class DocumentPlace
{
    /// <summary>Null for linked JSON and for other shapes, which tell no place here.</summary>
    internal static GeoPoint? Of(WeatherJson document)
    {
        if (
            document.Find("geometry") is not { IsObject: true } geometry
            || geometry.Find("type") is not { IsText: true } type
            || geometry.Find("coordinates") is not { } coordinates
        )
        {
            return null;
        }

        return type.Text() switch
        {
            "Point" => Mean([coordinates]),
            "Polygon" => Mean([.. coordinates.Items().Take(1).SelectMany(ring => ring.Items()).Skip(1)]),
            _ => null,
        };
    }

    /// <summary>The last corner of a ring is its first again, and is left out.</summary>
    private static GeoPoint? Mean(IReadOnlyList<WeatherJson> corners)
    {
        if (corners.Count == 0)
        {
            return null;
        }

        double longitude = 0,
            latitude = 0;
        foreach (var corner in corners)
        {
            var pair = corner.Items().Take(3).ToList();
            if (pair.Count < 2)
            {
                throw corner.Problem("expected longitude and latitude");
            }

            longitude += WeatherRanges.Check(pair[0].Number(), -180, 180, "degrees", pair[0].Problem);
            latitude += WeatherRanges.Check(pair[1].Number(), -90, 90, "degrees", pair[1].Problem);
        }

        return GeoPoint.FromDegrees(latitude / corners.Count, longitude / corners.Count);
    }
}
