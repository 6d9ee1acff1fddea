using System.Runtime.CompilerServices;

namespace PlotAgronomy.Calendar;

/// <summary>How the owner gets rid of what grows on the plot.</summary>
/// <remarks>It is only equal to itself; <c>weeds with { ... }</c> makes another one.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed record WeedControl
{
    /// <summary>Gets the way.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown way.</exception>
    public required WeedWay Way
    {
        get;
        init => field = Guard.Defined(value, nameof(Way));
    }

    /// <summary>Gets the kind that smothers the weeds; null for another way.</summary>
    public CropKind? SmotherKind { get; init; }

    /// <summary>Gets the day the smother crop was or will be sown; null to have it counted back.</summary>
    public DateOnly? SmotherSownOn { get; init; }

    /// <summary>Gets the days before the seed that the herbicide's own label asks for; null where it was not read.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, or more than any label asks for.</exception>
    public int? LabelDays
    {
        get;
        init =>
            field = value is { } days
                ? (int)Guard.Between(days, 0, CalendarConstants.All["longest-interval"], "days", nameof(LabelDays))
                : null;
    }

    /// <summary>Gets the owner's own way in the owner's words; null for another way.</summary>
    public string? Words { get; init; }

    /// <summary>Whether this is the very same one.</summary>
    /// <param name="other">Another one.</param>
    /// <returns>True for the same object.</returns>
    public bool Equals(WeedControl? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>The way.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Words ?? EnumWords<WeedWay>.FromNames()[Way];
}
