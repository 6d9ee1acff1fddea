using System.Collections.Immutable;

namespace PlotAgronomy.Calendar;

/// <summary>Kinds that are sown in one pass.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeasonPass
{
    /// <summary>Gets the kinds, at least one.</summary>
    /// <exception cref="ArgumentException">None, or a null among them.</exception>
    public required ImmutableArray<CropKind> Kinds
    {
        get;
        init
        {
            Guard.NotEmpty(Guard.Listed(value, nameof(Kinds)), nameof(Kinds));
            field = value;
        }
    }

    /// <summary>Gets a value indicating whether the seed is covered with soil; else it is pressed in.</summary>
    public bool IsCovered { get; init; }

    /// <summary>The kinds.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => CalendarText.Names(Kinds);
}
