namespace PlotAgronomy.Seeds;

/// <summary>A number of days with its sources, as a range.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class DayRange
{
    /// <summary>Gets the fewest days.</summary>
    public required int From { get; init; }

    /// <summary>Gets the most days.</summary>
    public required int To { get; init; }

    /// <summary>Gets the sources.</summary>
    public required Origin Evidence
    {
        get;
        init => field = Guard.NotNull(value, nameof(Evidence));
    }

    /// <summary>Text such as <c>5-10 days</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(From, 0)}-{Amounts.Print(To, 0)} days";

    internal static DayRange? Of(KindObservations kind, string figure)
    {
        foreach (var row in kind.Every(figure, null))
        {
            row.RequireWhole();
        }

        return PrintedSpan.Of(kind, figure, null, ["days"]) is { } span
            ? new()
            {
                From = (int)span.Low,
                To = (int)span.High,
                Evidence = span.Origin,
            }
            : null;
    }
}
