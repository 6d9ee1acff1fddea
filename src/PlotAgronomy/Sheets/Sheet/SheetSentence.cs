namespace PlotAgronomy.Sheets;

/// <summary>A sentence on the sheet.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SheetSentence : SheetBlock
{
    /// <summary>Gets the sentence.</summary>
    public required string Text { get; init; }
}
