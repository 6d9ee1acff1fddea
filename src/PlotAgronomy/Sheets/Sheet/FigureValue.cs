namespace PlotAgronomy.Sheets;

/// <summary>What a figure says: in print and, where it is a number, as one.</summary>
internal readonly record struct FigureValue(string Text, SheetAmount? Amount)
{
    public static implicit operator FigureValue(string text) => new(text, null);
}
