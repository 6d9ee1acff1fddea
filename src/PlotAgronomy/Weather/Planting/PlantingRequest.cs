namespace PlotAgronomy.Weather;

/// <summary>What is to be sown and what is known of the weeks ahead.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PlantingRequest
{
    /// <summary>Gets the kind.</summary>
    public required CropKind Kind
    {
        get;
        init => field = Guard.NotNull(value, nameof(Kind));
    }

    /// <summary>Gets where the seed will lie.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown placement.</exception>
    public required SeedPlacement Placement
    {
        get;
        init => field = Guard.Defined(value, nameof(Placement));
    }

    /// <summary>Gets the seedbed with the weather of the days ahead.</summary>
    public required SeedbedOutlook Seedbed
    {
        get;
        init => field = Guard.NotNull(value, nameof(Seedbed));
    }

    /// <summary>Gets the forecast of those days, which tells chances.</summary>
    public required WeatherForecast Forecast
    {
        get;
        init => field = Guard.NotNull(value, nameof(Forecast));
    }

    /// <summary>Gets the time zone of the place.</summary>
    public required TimeZoneInfo Zone
    {
        get;
        init => field = Guard.NotNull(value, nameof(Zone));
    }

    /// <summary>Gets the dates of the frost that stops the kind; null where they are not known or do not matter.</summary>
    public FrostDates? Frost { get; init; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"sowing {Kind.ShortName}";
}
