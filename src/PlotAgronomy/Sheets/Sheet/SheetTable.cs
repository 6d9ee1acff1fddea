using System.Collections.Immutable;

namespace PlotAgronomy.Sheets;

/// <summary>A plain table. Cells of numbers are text with their units in the column heading or the cell.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SheetTable : SheetBlock
{
    /// <summary>Gets the column headings.</summary>
    public required ImmutableArray<string> Columns
    {
        get;
        init => field = Guard.Listed(value, nameof(Columns));
    }

    /// <summary>Gets the rows, each as wide as the headings.</summary>
    public required ImmutableArray<SheetRow> Rows
    {
        get;
        init => field = Guard.Listed(value, nameof(Rows));
    }

    /// <summary>Gets a value indicating whether rows carry short codes.</summary>
    public bool HasCodes => Rows.Any(r => r.Figure is not null);

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join(" | ", Columns);
}
