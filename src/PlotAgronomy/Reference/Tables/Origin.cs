using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>Where a published number stands and how well that is known.</summary>
/// <param name="SourceId">Ids of the sources, parted by semicolons.</param>
/// <param name="Locator">Page, table or equation in the publication.</param>
/// <param name="Status">How well the number is known to stand there.</param>
internal sealed record Origin(string SourceId, string Locator, DataStatus Status)
{
    internal ImmutableArray<string> SourceIds => [.. SourceId.Split(';')];

    /// <summary>The same place by the first of its sources alone.</summary>
    internal Origin FirstSource => this with { SourceId = SourceIds[0] };
}
