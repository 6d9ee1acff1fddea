using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Where a group of a kind's figures comes from and how well that is known.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class KindEvidence
{
    /// <summary>Gets the sources; empty for a figure of the user's own.</summary>
    public required ImmutableArray<Source> Sources { get; init; }

    /// <summary>Gets how well the figures are known; a figure of the user's own counts as read.</summary>
    public required DataStatus Status { get; init; }

    /// <summary>Gets what each source says, in words, so that a reader can choose another.</summary>
    public required string Detail { get; init; }

    /// <summary>Gets a value indicating whether the user gave the figures.</summary>
    public bool IsUsersOwn { get; init; }

    /// <summary>Evidence for a figure the user measured or chose.</summary>
    /// <param name="detail">Where the user has it from, such as <c>count of 10 g from the lot</c>.</param>
    /// <returns>The evidence.</returns>
    /// <exception cref="ArgumentException">Blank text.</exception>
    public static KindEvidence FromUser(string detail) =>
        new()
        {
            Sources = [],
            Status = DataStatus.Read,
            Detail = Guard.NotBlank(detail),
            IsUsersOwn = true,
        };

    /// <summary>Where the figures stand; null for the user's own.</summary>
    internal Origin? Origin => Sources.IsEmpty ? null : new(Sources, Detail, Status);

    internal static KindEvidence Of(Origin origin) =>
        new()
        {
            Sources = origin.Sources,
            Status = origin.Status,
            Detail = origin.Locator,
        };

    /// <summary>Evidence of figures that answer together: they are known as well as the least known of them.</summary>
    internal static KindEvidence LeastKnownOf(params ReadOnlySpan<Origin> origins)
    {
        var leastKnown = origins[0];
        foreach (var origin in origins)
        {
            leastKnown = Doubt(origin) > Doubt(leastKnown) ? origin : leastKnown;
        }

        return Of(leastKnown);
    }

    /// <summary>The finding every answer carries that rests on these figures while they are from memory; null when they are
    /// not.</summary>
    internal Finding? FindingFor(string figure) => Status == DataStatus.Memory ? MemoryGate.FindingFor(figure, Sources) : null;

    private static int Doubt(Origin origin) =>
        origin.Status switch
        {
            DataStatus.Read => 0,
            DataStatus.Practice => 1,
            _ => 2,
        };
}
