using System.Collections.Immutable;

namespace PlotAgronomy;

/// <summary>Where a published number or formula stands, and how well that is known.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class Origin : IEquatable<Origin>
{
    internal Origin(ImmutableArray<Source> sources, string locator, DataStatus status) =>
        (Sources, Locator, Status) = (sources, locator, status);

    internal Origin(Source source, DataStatus status, string locator = "")
        : this([source], locator, status) { }

    /// <summary>Gets the sources, the first the one it was taken from.</summary>
    public ImmutableArray<Source> Sources { get; }

    /// <summary>Gets the page, table or equation there; empty where it is not told.</summary>
    public string Locator { get; }

    /// <summary>Gets how well it is known to stand there.</summary>
    public DataStatus Status { get; }

    /// <summary>The same place by the first of its sources alone.</summary>
    internal Origin FirstSource => new([Sources[0]], Locator, Status);

    /// <summary>The same place for a number that is known no better than this.</summary>
    internal Origin KnownAs(DataStatus status) => new(Sources, Locator, status);

    /// <inheritdoc/>
    public bool Equals(Origin? other) =>
        other is not null && Sources.SequenceEqual(other.Sources) && Locator == other.Locator && Status == other.Status;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Origin);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Sources[0].Id, Locator, Status);

    /// <summary>The ids of the sources.</summary>
    /// <returns>Text such as <c>LIME-1;LIME-2</c>.</returns>
    public override string ToString() => string.Join(';', Sources.Select(s => s.Id));
}
