namespace PlotAgronomy.Reference;

internal static class WholeWords
{
    /// <summary>Tells whether a text holds words that are not parts of longer ones, blind to case.</summary>
    internal static bool Hold(string text, string words)
    {
        int at = text.IndexOf(words, StringComparison.OrdinalIgnoreCase);
        return at >= 0
            && (at == 0 || !char.IsLetter(text[at - 1]))
            && (at + words.Length == text.Length || !char.IsLetter(text[at + words.Length]));
    }
}
