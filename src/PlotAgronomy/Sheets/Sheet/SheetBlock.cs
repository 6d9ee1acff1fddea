namespace PlotAgronomy.Sheets;

/// <summary>One piece of a section: a sentence, a figure, a table or ordered steps.</summary>
public abstract class SheetBlock
{
    private protected SheetBlock() { }
}
