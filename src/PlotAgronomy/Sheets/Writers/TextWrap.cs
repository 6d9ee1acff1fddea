using System.Text;

namespace PlotAgronomy.Sheets;

/// <summary>Breaks text into lines between words; a word longer than a line begins a line of its own and is
/// cut. The blank at which a line breaks stays at its end where it fits, blanks that begin the text stay too.</summary>
internal static class TextWrap
{
    internal static List<string> Lines(string text, int width)
    {
        var lines = new List<string>();
        foreach (string paragraph in text.ReplaceLineEndings("\n").Split('\n'))
        {
            if (TextWidth.Of(paragraph) <= width)
            {
                lines.Add(paragraph);
            }
            else
            {
                Break(paragraph, width, lines);
            }
        }

        return lines;
    }

    /// <summary>Columns of the longest line before any wrapping.</summary>
    internal static int Longest(string text) => text.ReplaceLineEndings("\n").Split('\n').Max(l => TextWidth.Of(l));

    private static void Break(string paragraph, int width, List<string> lines)
    {
        var line = new StringBuilder();
        int used = 0;
        bool wrapped = false;
        foreach (string piece in Pieces(paragraph, width))
        {
            int columns = TextWidth.Of(piece);
            if (used + columns > width)
            {
                lines.Add(line.ToString());
                line.Clear();
                used = 0;
                wrapped = true;
            }

            if (used > 0 || !wrapped || !char.IsWhiteSpace(piece[0]))
            {
                line.Append(piece);
                used += columns;
            }
        }

        if (used > 0)
        {
            lines.Add(line.ToString());
        }
    }

    /// <summary>Words and the blanks between them in turn, none wider than a line.</summary>
    private static IEnumerable<string> Pieces(string paragraph, int width)
    {
        int start = 0;
        while (start < paragraph.Length)
        {
            bool blank = char.IsWhiteSpace(paragraph[start]);
            int end = start + 1;
            while (end < paragraph.Length && char.IsWhiteSpace(paragraph[end]) == blank)
            {
                end++;
            }

            while (start < end)
            {
                int taken = TextWidth.CharactersWithin(paragraph.AsSpan(start, end - start), width);
                yield return paragraph.Substring(start, taken);
                start += taken;
            }
        }
    }
}
