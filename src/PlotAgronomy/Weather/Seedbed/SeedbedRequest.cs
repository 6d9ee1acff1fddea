using System.Collections.Immutable;
using PlotAgronomy.Land;
using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>A bare seedbed and the weather over it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedbedRequest
{
    /// <summary>Gets the days, observed or forecast, one after the other.</summary>
    /// <exception cref="ArgumentException">No day, or days that do not follow each other.</exception>
    public required ImmutableArray<WeatherDay> Days
    {
        get;
        init
        {
            Guard.Listed(value, nameof(Days));
            bool follow = value.Length > 0 && value.Zip(value.Skip(1)).All(p => p.First.Date.AddDays(1) == p.Second.Date);
            field = follow
                ? value
                : throw new ArgumentException("Must be days that follow each other, at least one.", nameof(Days));
        }
    }

    /// <summary>Gets the place.</summary>
    public required GeoPoint Place { get; init; }

    /// <summary>Gets the texture of the surface; null where it is not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown texture.</exception>
    public SoilTexture? Texture
    {
        get;
        init => field = Guard.Defined(value, nameof(Texture));
    }

    /// <summary>Gets how wet the surface is before the first day.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown start.</exception>
    public SurfaceStart Start
    {
        get;
        init => field = Guard.Defined(value, nameof(Start));
    }

    /// <summary>Gets the height above the sea; sea level where it is not known.</summary>
    public Length? Elevation { get; init; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"seedbed at {Place}, {Amounts.Print(Days.Length, 0)} days";
}
