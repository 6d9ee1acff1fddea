using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>One day, or half a day, of a forecast typed by hand. What is not told is null.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class TypedForecastLine
{
    /// <summary>Gets the date; of a night the one it begins on.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Gets the part of the day.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown part.</exception>
    public TypedForecastPart Part
    {
        get;
        init => field = Guard.Defined(value, nameof(Part));
    }

    /// <summary>Gets the chance of rain.</summary>
    public Fraction? Chance { get; init; }

    /// <summary>Gets the amount of rain.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public Length? Rain
    {
        get;
        init => field = WeatherDay.CheckedRain(value, nameof(Rain));
    }

    /// <summary>Gets the high.</summary>
    public Temperature? High
    {
        get;
        init => field = WeatherDay.Checked(value, nameof(High));
    }

    /// <summary>Gets the low.</summary>
    public Temperature? Low
    {
        get;
        init => field = WeatherDay.Checked(value, nameof(Low));
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        FormattableString.Invariant($"{Date:yyyy-MM-dd}, {Chance?.ToString() ?? "no chance typed"}");
}
