using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace PlotAgronomy.Tests.Fuzz;

/// <summary>Slips and malice in a text: characters changed, dropped and doubled, lines moved, numbers made odd, two texts joined.</summary>
internal static partial class TextSpoiling
{
    private static readonly string[] Odd =
    [
        "", " ", "\0", "\u001b[31m", "é", "漢", "٣", "\uFEFF", "\uD800", "\r", "\n", "\t", "\"", "'", "{", "}", "[", "]", "<", ">", ",", ";", ":", "%", "-", "/", "=", "\\",
        "NaN", "Infinity", "null", "true", "1e400", "1e-400", "-0", "0", "9999999999999999999", "0.1.2", "2026-02-30", "24:60", new('9', 300), new('x', 3000), "<!DOCTYPE a [<!ENTITY b 'c'>]>", "&b;", "]]>", "T00:00:00Z", "+99:99",
    ];

    private static readonly double[] Factors = [0, -1, 0.1, 10, 1e6, 1e12, 1e-9, 1e300];

    /// <summary>The text with each of its numbers in turn made too long for whole numbers, for decimals and for doubles (IEEE
    /// 754).</summary>
    internal static IEnumerable<string> WithEndlessDigits(string text) =>
        from number in Digits().Matches(text)
        from length in (int[])[12, 40, 400]
        select $"{text[..number.Index]}{new string('9', length)}{text[(number.Index + number.Length)..]}";

    internal static string Spoil(string text, IReadOnlyList<string> others, Random random)
    {
        var spoilt = new StringBuilder(text);
        for (int slips = random.Next(1, 5); slips > 0; slips--)
        {
            int at = random.Next(spoilt.Length + 1), length = Math.Min(random.Next(1, 12), spoilt.Length - at);
            switch (random.Next(8))
            {
                case 0:
                    spoilt.Remove(at, length);
                    break;
                case 1:
                    spoilt.Insert(at, spoilt.ToString(at, length));
                    break;
                case 2 when at < spoilt.Length:
                    spoilt[at] = (char)random.Next(1, 0x250);
                    break;
                case 3:
                    spoilt.Length = at;
                    break;
                case 4:
                    Number(spoilt, random);
                    break;
                case 5:
                    Line(spoilt, random);
                    break;
                case 6:
                    string other = others[random.Next(others.Count)];
                    spoilt.Insert(at, other.AsSpan(random.Next(other.Length + 1)));
                    break;
                default:
                    spoilt.Insert(at, Odd[random.Next(Odd.Length)]);
                    break;
            }
        }

        return spoilt.ToString();
    }

    /// <summary>One number of the text becomes another one of its sort.</summary>
    private static void Number(StringBuilder text, Random random)
    {
        int from = random.Next(text.Length + 1);
        while (from < text.Length && !char.IsAsciiDigit(text[from]))
        {
            from++;
        }

        int to = from;
        while (to < text.Length && (char.IsAsciiDigit(text[to]) || text[to] == '.'))
        {
            to++;
        }

        if (double.TryParse(text.ToString(from, to - from), NumberStyles.Float, CultureInfo.InvariantCulture, out double number))
        {
            text.Remove(from, to - from).Insert(from, (number * Factors[random.Next(Factors.Length)]).ToString(CultureInfo.InvariantCulture));
        }
    }

    private static void Line(StringBuilder text, Random random)
    {
        string[] lines = text.ToString().Split('\n');
        int one = random.Next(lines.Length), other = random.Next(lines.Length);
        (lines[one], lines[other]) = random.Next(3) == 0 ? (lines[one], lines[one]) : (lines[other], lines[one]);
        text.Clear().AppendJoin('\n', lines);
    }

    [GeneratedRegex("[0-9]+")]
    private static partial Regex Digits();
}
