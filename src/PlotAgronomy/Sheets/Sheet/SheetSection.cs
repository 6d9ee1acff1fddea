using System.Collections.Immutable;

namespace PlotAgronomy.Sheets;

/// <summary>A section of the field sheet.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SheetSection
{
    /// <summary>Gets the id, such as <c>lime</c>: lower case with hyphens, its own on the sheet and the same on every sheet of
    /// its sort.</summary>
    public required string Id
    {
        get;
        init => field = Guard.NotNull(value, nameof(Id));
    }

    /// <summary>Gets the heading.</summary>
    public required string Heading
    {
        get;
        init => field = Guard.NotNull(value, nameof(Heading));
    }

    /// <summary>Gets the blocks, in order.</summary>
    public required ImmutableArray<SheetBlock> Blocks
    {
        get;
        init => field = Guard.Listed(value, nameof(Blocks));
    }

    /// <summary>Where it stands.</summary>
    internal SheetPart Part { get; init; }

    /// <summary>Whether codes stand beside its figures in print: what is carried to the field goes without.</summary>
    internal bool ShowsCodes(bool showWork) => showWork || Part != SheetPart.Front;

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Heading;
}
