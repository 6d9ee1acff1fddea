using System.Collections.Immutable;

namespace PlotAgronomy.Sheets;

/// <summary>A row of a table on the sheet; a row of numbers carries the figure that explains it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SheetRow
{
    /// <summary>Gets the cells.</summary>
    public required ImmutableArray<string> Cells
    {
        get;
        init => field = Guard.Listed(value, nameof(Cells));
    }

    /// <summary>Gets the figure behind the row, or null for plain facts.</summary>
    public SheetFigure? Figure { get; init; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join(" | ", Cells);
}
