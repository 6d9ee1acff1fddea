namespace PlotAgronomy.Sheets;

/// <summary>One piece of a section: a sentence, a figure, a table or ordered steps.</summary>
[JsonConverter(typeof(NotForJson))]
public abstract class SheetBlock
{
    private protected SheetBlock() { }
}
