using System.Globalization;
using System.Text.RegularExpressions;

namespace PlotAgronomy.Seeds;

/// <summary>Noxious weeds and their seeds per pound, as a tag lists them: "9 wild onion, dock 1,200 per lb".</summary>
internal static partial class NoxiousText
{
    private const string NotNamed = "a weed not named";

    /// <summary>Every weed with a count above 0. A comma before three digits parts thousands, any other comma weeds.</summary>
    internal static IEnumerable<(string Name, double Count)> CountsIn(string weeds) =>
        Separators().Split(weeds).SelectMany(InPiece).Where(weed => weed.Count > 0);

    /// <summary>The weeds of a piece: each count stands before its name, or each after it.</summary>
    private static IEnumerable<(string Name, double Count)> InPiece(string piece)
    {
        var counts = Count().Matches(piece);
        if (counts.Count == 0)
        {
            yield break;
        }

        bool isCountFirst = NameIn(piece[..counts[0].Index]).Length == 0;
        for (int i = 0; i < counts.Count; i++)
        {
            int end = counts[i].Index + counts[i].Length;
            string name = isCountFirst
                ? piece[end..(i + 1 < counts.Count ? counts[i + 1].Index : piece.Length)]
                : piece[(i > 0 ? counts[i - 1].Index + counts[i - 1].Length : 0)..counts[i].Index];
            name = NameIn(name);
            yield return (name.Length > 0 ? name : NotNamed, Number(counts[i].Value));
        }
    }

    private static double Number(string count) =>
        double.Parse(
            string.Concat(count.Where(c => char.IsAsciiDigit(c) || c == '.')),
            NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture
        );

    private static string NameIn(string text) => string.Join(' ', Word().Matches(text).Select(m => m.Value));

    [GeneratedRegex(@";|,(?!(?<=[0-9],)[0-9]{3}(?![0-9]))", RegexOptions.CultureInvariant)]
    private static partial Regex Separators();

    [GeneratedRegex(
        @"(?<![0-9])[0-9]{1,3}(?:[, \u00A0\u202F][0-9]{3}(?![0-9]))+(?:\.[0-9]+)?|[0-9]+(?:\.[0-9]+)?(?![0-9.]*\s*%)",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Count();

    [GeneratedRegex(@"\b(?!(?:per|lbs?|pounds?|seeds?)\b)[A-Za-z]+\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Word();
}
