namespace PlotAgronomy.Seeds;

/// <summary>Something worth knowing about a kind, in words, with its sources.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class KindNote
{
    /// <summary>Gets the words.</summary>
    public required string Text
    {
        get;
        init => field = Guard.NotNull(value, nameof(Text));
    }

    /// <summary>Gets the sources.</summary>
    public required Origin Evidence
    {
        get;
        init => field = Guard.NotNull(value, nameof(Evidence));
    }

    /// <summary>The words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Text;

    internal static KindNote? Of(KindObservations kind, string figure) =>
        kind.Find(figure) is { } observation ? Of(observation) : null;

    internal static IEnumerable<KindNote> Each(KindObservations kind, string figure) => kind.Each(figure).Select(Of);

    private static KindNote Of(KindObservation observation) =>
        new() { Text = observation.Words(), Evidence = observation.Origin };
}
