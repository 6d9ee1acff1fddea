using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>What the origin of a kind's figures says of an answer that rests on them.</summary>
internal static class KindOrigins
{
    /// <summary>The origin of figures that answer together: they are known as well as the least known of them.</summary>
    internal static Origin LeastKnownOf(params ReadOnlySpan<Origin> origins)
    {
        var leastKnown = origins[0];
        foreach (var origin in origins)
        {
            var weaker = DataStatuses.WeakestOf(origin.Status, leastKnown.Status);
            leastKnown = weaker == leastKnown.Status ? leastKnown : origin;
        }

        return leastKnown;
    }

    /// <summary>The origin of rows that say one thing together.</summary>
    internal static Origin Together(params ReadOnlySpan<KindObservation> rows) =>
        new(
            [.. rows.ToArray().SelectMany(r => r.Sources).Distinct()],
            string.Join("; ", rows.ToArray().Select(r => r.Locator).OfType<string>().Distinct()),
            DataStatuses.WeakestOf([.. rows.ToArray().Select(r => r.Status)])
        );

    /// <summary>The finding every answer carries that rests on these figures while they are from memory; null when they are
    /// not.</summary>
    internal static Finding? FindingFor(this Origin origin, string figure) =>
        origin.Status == DataStatus.Memory ? MemoryGate.FindingFor(figure, origin.Sources) : null;
}
