using PlotAgronomy.Weather;

namespace PlotAgronomy.Calendar;

/// <summary>A kind that waits for its day of sowing.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class KindToSow
{
    /// <summary>Gets the kind.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required CropKind Kind
    {
        get;
        init => field = Guard.NotNull(value, nameof(Kind));
    }

    /// <summary>Gets where its seed will lie.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown placement.</exception>
    public required SeedPlacement Placement
    {
        get;
        init => field = Guard.Defined(value, nameof(Placement));
    }

    /// <summary>Gets the pH that a new test must show before it is sown; null where today's soil will do.</summary>
    public double? WaitsForPh { get; init; }

    /// <summary>The kind.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Kind.ShortName;
}
