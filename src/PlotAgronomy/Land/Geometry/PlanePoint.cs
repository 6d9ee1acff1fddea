using System.Globalization;

namespace PlotAgronomy.Land;

/// <summary>A place on the local plane of a plot: so far east, so far north of the plot's own zero.</summary>
/// <remarks>Held in feet. The default is the zero point.</remarks>
[JsonConverter(typeof(JsonTextConverter<PlanePoint>))]
public readonly record struct PlanePoint : IJsonText<PlanePoint>
{
    internal PlanePoint(double eastFeet, double northFeet)
    {
        EastFeet = eastFeet;
        NorthFeet = northFeet;
    }

    /// <summary>Gets the distance east of zero in feet; west is negative.</summary>
    public double EastFeet { get; }

    /// <summary>Gets the distance north of zero in feet; south is negative.</summary>
    public double NorthFeet { get; }

    /// <summary>Creates a point from feet.</summary>
    /// <param name="eastFeet">Feet east; finite.</param>
    /// <param name="northFeet">Feet north; finite.</param>
    /// <returns>The point.</returns>
    /// <exception cref="ArgumentOutOfRangeException">NaN or infinite.</exception>
    public static PlanePoint FromFeet(double eastFeet, double northFeet) =>
        new(Guard.Finite(eastFeet, "ft"), Guard.Finite(northFeet, "ft"));

    /// <summary>Invariant text such as <c>120.5 ft E, 30 ft N</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string along = EastFeet < 0 ? "W" : "E",
            across = NorthFeet < 0 ? "S" : "N";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{Math.Abs(EastFeet):0.#} ft {along}, {Math.Abs(NorthFeet):0.#} ft {across}"
        );
    }

    static string IJsonText<PlanePoint>.ToJsonText(PlanePoint value) =>
        $"{ExactText.Of(value.EastFeet)} ft east, {ExactText.Of(value.NorthFeet)} ft north";

    static PlanePoint IJsonText<PlanePoint>.FromJsonText(string text)
    {
        var (east, north) = ExactText.Halves(text, ", ");
        return FromFeet(ExactText.Number(east, "ft east"), ExactText.Number(north, "ft north"));
    }
}
