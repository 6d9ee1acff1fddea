namespace PlotAgronomy.Sheets;

/// <summary>A sentence on the sheet.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SheetSentence : SheetBlock
{
    /// <summary>Gets the sentence.</summary>
    public required string Text
    {
        get;
        init => field = Guard.NotNull(value, nameof(Text));
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Text;
}
