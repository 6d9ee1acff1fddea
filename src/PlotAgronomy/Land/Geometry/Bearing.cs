using System.Globalization;

namespace PlotAgronomy.Land;

/// <summary>A direction over the ground, clockwise from north; on an outline that is not
/// placed on the earth, from the plan's own north.</summary>
/// <remarks>Held in degrees from 0 up to, but not including, 360. The default is north.</remarks>
[JsonConverter(typeof(JsonTextConverter<Bearing>))]
public readonly record struct Bearing : IJsonText<Bearing>
{
    private Bearing(double degrees) => Degrees = degrees;

    /// <summary>Gets the direction in degrees clockwise from north.</summary>
    public double Degrees { get; }

    /// <summary>Creates a direction.</summary>
    /// <param name="degrees">Degrees clockwise from north; from 0 to 360, 360 being north again.</param>
    /// <returns>The direction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below 0, above 360, NaN or infinite.</exception>
    public static Bearing FromDegrees(double degrees) => new(Guard.Between(degrees, 0, 360, "degrees") % 360);

    /// <summary>Invariant text such as <c>45 degrees (NE)</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        ReadOnlySpan<string> points = ["N", "NE", "E", "SE", "S", "SW", "W", "NW"];
        return string.Create(CultureInfo.InvariantCulture, $"{Degrees:0.#} degrees ({points[(int)((Degrees + 22.5) / 45) % 8]})");
    }

    static string IJsonText<Bearing>.ToJsonText(Bearing value) => $"{ExactText.Of(value.Degrees)} degrees";

    static Bearing IJsonText<Bearing>.FromJsonText(string text) => FromDegrees(ExactText.Number(text, "degrees"));
}
