using System.Globalization;

namespace PlotAgronomy.Land;

/// <summary>A place on the ground in latitude and longitude (WGS84).</summary>
/// <remarks>Held in decimal degrees, north and east positive. The default is latitude 0, longitude 0.</remarks>
[JsonConverter(typeof(JsonTextConverter<GeoPoint>))]
public readonly record struct GeoPoint : IJsonText<GeoPoint>
{
    private GeoPoint(double latitudeDegrees, double longitudeDegrees)
    {
        LatitudeDegrees = latitudeDegrees;
        LongitudeDegrees = longitudeDegrees;
    }

    /// <summary>Gets the latitude in decimal degrees, north positive.</summary>
    public double LatitudeDegrees { get; }

    /// <summary>Gets the longitude in decimal degrees, east positive.</summary>
    public double LongitudeDegrees { get; }

    /// <summary>Creates a point. Latitude comes first.</summary>
    /// <param name="latitudeDegrees">Latitude in decimal degrees; from -90 to 90.</param>
    /// <param name="longitudeDegrees">Longitude in decimal degrees; from -180 to 180.</param>
    /// <returns>The point.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, NaN or infinite.</exception>
    public static GeoPoint FromDegrees(double latitudeDegrees, double longitudeDegrees) =>
        new(
            Guard.Between(latitudeDegrees, -90, 90, "degrees of latitude"),
            Guard.Between(longitudeDegrees, -180, 180, "degrees of longitude")
        );

    /// <summary>Invariant text such as <c>40.123456, -90.123456</c>.</summary>
    /// <returns>The text, latitude first, to a tenth of a metre.</returns>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{LatitudeDegrees:0.000000}, {LongitudeDegrees:0.000000}");

    static string IJsonText<GeoPoint>.ToJsonText(GeoPoint value) =>
        $"{ExactText.Of(value.LatitudeDegrees)}, {ExactText.Of(value.LongitudeDegrees)}";

    static GeoPoint IJsonText<GeoPoint>.FromJsonText(string text)
    {
        var (latitude, longitude) = ExactText.Halves(text, ", ");
        return FromDegrees(ExactText.Number(latitude), ExactText.Number(longitude));
    }
}
