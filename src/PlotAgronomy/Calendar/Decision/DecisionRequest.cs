using System.Collections.Immutable;
using PlotAgronomy.Land;
using PlotAgronomy.Seeds;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Calendar;

/// <summary>What waits to be sown, and what is known of weather, ground, lime and frost.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class DecisionRequest
{
    /// <summary>Gets the kinds, at least one.</summary>
    /// <exception cref="ArgumentException">None, or a null among them.</exception>
    public required ImmutableArray<KindToSow> Kinds
    {
        get;
        init
        {
            Guard.NotEmpty(Guard.Listed(value, nameof(Kinds)), nameof(Kinds));
            field = value;
        }
    }

    /// <summary>Gets the forecast.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required WeatherForecast Forecast
    {
        get;
        init => field = Guard.NotNull(value, nameof(Forecast));
    }

    /// <summary>Gets the weather observed up to it; null where none was.</summary>
    public WeatherHistory? Observed { get; init; }

    /// <summary>Gets the time zone whose days are counted.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required TimeZoneInfo Zone
    {
        get;
        init => field = Guard.NotNull(value, nameof(Zone));
    }

    /// <summary>Gets the place; null takes the middle of the state, or what the forecast's document is for.</summary>
    public GeoPoint? Where { get; init; }

    /// <summary>Gets the state or province, or null.</summary>
    public Place? Place { get; init; }

    /// <summary>Gets the texture of the surface; null where it is not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown texture.</exception>
    public SoilTexture? Texture
    {
        get;
        init => field = Guard.Defined(value, nameof(Texture));
    }

    /// <summary>Gets the region by which printed planting dates are found, or null.</summary>
    public PlantingRegion? Region { get; init; }

    /// <summary>Gets the dates of the first freeze, or null.</summary>
    public FrostDates? Frost { get; init; }

    /// <summary>Gets the day the lime was spread, or null.</summary>
    public DateOnly? LimedOn { get; init; }

    /// <summary>Gets a value indicating whether the ground is worked on the day of sowing.</summary>
    public bool WorksTheGround { get; init; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"sowing {CalendarText.Names(Kinds.Select(k => k.Kind))}";
}
