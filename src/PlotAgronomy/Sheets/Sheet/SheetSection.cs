using System.Collections.Immutable;

namespace PlotAgronomy.Sheets;

/// <summary>A section of the field sheet.</summary>
public sealed class SheetSection
{
    /// <summary>Gets the heading.</summary>
    public required string Heading { get; init; }

    /// <summary>Gets the blocks, in order.</summary>
    public required ImmutableArray<SheetBlock> Blocks { get; init; }
}
