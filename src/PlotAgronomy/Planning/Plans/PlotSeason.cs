using System.Runtime.CompilerServices;
using PlotAgronomy.Calendar;
using PlotAgronomy.Land;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Planning;

/// <summary>What the owner knows of place, frost and weeds.</summary>
/// <remarks>It is only equal to itself; <c>season with { ... }</c> makes another one. What is left out is asked.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed record PlotSeason
{
    /// <summary>Gets where the plot lies, near enough for sun and evaporation; null takes a walked corner of the plot, or the
    /// middle of its state.</summary>
    public GeoPoint? Where { get; init; }

    /// <summary>Gets the dates of the first freeze as a station's normals print them; null where they are not known.</summary>
    public FrostDates? Frost { get; init; }

    /// <summary>Gets the weather of past years nearby, from which first freezes are found where none are stated; or
    /// null.</summary>
    public WeatherHistory? Station { get; init; }

    /// <summary>Gets how what grows on the plot is got rid of; null where it is not stated.</summary>
    public WeedControl? Weeds { get; init; }

    internal bool SaysNothing => this is { Where: null, Frost: null, Station: null, Weeds: null };

    /// <summary>Whether this is the very same one.</summary>
    /// <param name="other">Another one.</param>
    /// <returns>True for the same object.</returns>
    public bool Equals(PlotSeason? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>What is known.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Join(
            ", ",
            new object?[] { Frost, Station, Weeds }
                .OfType<object>()
                .Select(o => o.ToString())
                .Prepend("season")
        );
}
