using System.Collections.Immutable;

namespace PlotAgronomy.Sheets;

/// <summary>Remarks that each begin with a word, such as findings with their severity.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SheetRemarks : SheetBlock
{
    /// <summary>Gets the remarks.</summary>
    public required ImmutableArray<SheetRemark> Remarks
    {
        get;
        init => field = Guard.Listed(value, nameof(Remarks));
    }

    /// <summary>The remarks.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("; ", Remarks);
}
