using System.Collections.Immutable;

namespace PlotAgronomy;

/// <summary>Where a number or formula stands, and how well that is known.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class Origin : IEquatable<Origin>
{
    internal Origin(ImmutableArray<Source> sources, string locator, DataStatus status) =>
        (Sources, Locator, Status) = (sources, locator, status);

    internal Origin(Source source, DataStatus status, string locator = "")
        : this([source], locator, status) { }

    /// <summary>Gets the sources, the first the one it was taken from; empty for a figure of the user's own.</summary>
    public ImmutableArray<Source> Sources { get; }

    /// <summary>Gets the page, table or equation there, what each source says, or where the user has it from; empty where it is
    /// not told.</summary>
    public string Locator { get; }

    /// <summary>Gets how well it is known to stand there; a figure of the user's own counts as read.</summary>
    public DataStatus Status { get; }

    /// <summary>Gets a value indicating whether the user gave the figure.</summary>
    public bool IsUsersOwn => Sources.IsEmpty;

    /// <summary>The same place where it is published; null for the user's own.</summary>
    internal Origin? Published => IsUsersOwn ? null : this;

    /// <summary>The same place by the first of its sources alone.</summary>
    internal Origin FirstSource => new([Sources[0]], Locator, Status);

    /// <summary>The same place for a number that is known no better than this.</summary>
    internal Origin KnownAs(DataStatus status) => new(Sources, Locator, status);

    /// <summary>Origin of a figure the user measured or chose.</summary>
    /// <param name="detail">Where the user has it from, such as <c>count of 10 g from the lot</c>.</param>
    /// <returns>The origin.</returns>
    /// <exception cref="ArgumentException">Blank text.</exception>
    public static Origin FromUser(string detail) => new([], Guard.NotBlank(detail), DataStatus.Read);

    /// <inheritdoc/>
    public bool Equals(Origin? other) =>
        other is not null && Sources.SequenceEqual(other.Sources) && Locator == other.Locator && Status == other.Status;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Origin);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Sources.Length, Locator, Status);

    /// <summary>The ids of the sources.</summary>
    /// <returns>Text such as <c>LIME-1;LIME-2</c>.</returns>
    public override string ToString() => string.Join(';', Sources.Select(s => s.Id));
}
