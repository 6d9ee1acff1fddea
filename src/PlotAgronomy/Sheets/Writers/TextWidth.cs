using System.Globalization;
using System.Text;

namespace PlotAgronomy.Sheets;

/// <summary>How many columns of a terminal text takes: none for marks that sit on a letter, two for wide letters.</summary>
internal static class TextWidth
{
    private static readonly (int First, int Last)[] Wide =
    [
        (0x1100, 0x115F),
        (0x2E80, 0x303E),
        (0x3041, 0xA4CF),
        (0xAC00, 0xD7A3),
        (0xF900, 0xFAFF),
        (0xFE30, 0xFE6F),
        (0xFF00, 0xFF60),
        (0xFFE0, 0xFFE6),
        (0x1F300, 0x1F64F),
        (0x1F900, 0x1F9FF),
        (0x20000, 0x3FFFD),
    ];

    internal static int Of(ReadOnlySpan<char> text)
    {
        int columns = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            columns += Of(rune);
        }

        return columns;
    }

    /// <summary>How many characters fit into so many columns; at least one letter with its marks.</summary>
    internal static int CharactersWithin(ReadOnlySpan<char> text, int columns)
    {
        int used = 0,
            characters = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            used += Of(rune);
            if (used > columns && characters > 0)
            {
                break;
            }

            characters += rune.Utf16SequenceLength;
        }

        return characters;
    }

    private static int Of(Rune rune) =>
        rune.IsAscii ? 1
        : Rune.GetUnicodeCategory(rune)
            is UnicodeCategory.NonSpacingMark
                or UnicodeCategory.EnclosingMark
                or UnicodeCategory.Format
            ? 0
        : IsWide(rune.Value) ? 2
        : 1;

    private static bool IsWide(int code)
    {
        foreach (var (first, last) in Wide)
        {
            if (code >= first && code <= last)
            {
                return true;
            }
        }

        return false;
    }
}
