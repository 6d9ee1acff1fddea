using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace PlotAgronomy.Seeds;

/// <summary>Finds words, numbers and dates in a line of a tag.</summary>
internal static partial class TagText
{
    /// <summary>Labels in the order they are tried: the longer before the one it holds.</summary>
    private static readonly ImmutableArray<(TagPart Part, Regex Label)> Labels =
    [
        (TagPart.PureLive, PureLiveLabel()),
        (TagPart.Total, TotalLabel()),
        (TagPart.Germination, GerminationLabel()),
        (TagPart.Hard, HardLabel()),
        (TagPart.Dormant, DormantLabel()),
        (TagPart.OtherCrop, OtherCropLabel()),
        (TagPart.Inert, InertLabel()),
        (TagPart.Weed, WeedLabel()),
        (TagPart.Coating, CoatingLabel()),
        (TagPart.Pure, PureLabel()),
    ];

    /// <summary>What makes a total of a germination: "and hard seed", ", hard and dormant seed".</summary>
    private const string AndHard =
        @"(?:\s*,\s*hard(?:\s+seeds?)?\s*,?\s*(?:and|&|\+)\s*dormant"
        + @"|\s*,?\s*(?:and|&|\+)\s*hard(?:\s+seeds?)?(?:\s*,?\s*(?:and|or|&|\+|/)\s*dormant)?)(?:\s+seeds?)?";

    private static readonly string[] MonthNames =
    [
        "jan",
        "feb",
        "mar",
        "apr",
        "may",
        "jun",
        "jul",
        "aug",
        "sep",
        "oct",
        "nov",
        "dec",
    ];

    internal readonly record struct Mark(int At, int End);

    /// <summary>The text with digits and percent signs of other scripts as plain ones.</summary>
    internal static string WithPlainDigits(string text) => string.Create(text.Length, text, static (plain, given) =>
        {
            for (int i = 0; i < plain.Length; i++)
            {
                int digit = char.IsAscii(given[i]) ? -1 : CharUnicodeInfo.GetDecimalDigitValue(given[i]);
                plain[i] =
                    digit >= 0 ? (char)('0' + digit)
                    : given[i] is '\uFF05' ? '%'
                    : given[i];
            }
        });

    /// <summary>All labels of a line in the order they stand, none inside another.</summary>
    internal static List<(TagPart Part, Mark Where)> LabelsIn(string line)
    {
        var found = new List<(TagPart Part, Mark Where)>();
        bool[] isTaken = new bool[line.Length];
        foreach (var (part, label) in Labels)
        {
            foreach (Match m in label.Matches(line))
            {
                if (!isTaken.AsSpan(m.Index, m.Length).Contains(true))
                {
                    Array.Fill(isTaken, true, m.Index, m.Length);
                    found.Add((part, new(m.Index, m.Index + m.Length)));
                }
            }
        }

        return [.. found.OrderBy(f => f.Where.At)];
    }

    /// <summary>All numbers of a line, with whether one was written with a decimal comma.</summary>
    internal static List<(double Value, Mark Where, bool Comma)> NumbersIn(string line) =>
        [
            .. Number()
                .Matches(line)
                .Select(m =>
                    (
                        double.Parse(
                            m.Groups["n"].Value.Replace(',', '.'),
                            NumberStyles.AllowDecimalPoint,
                            CultureInfo.InvariantCulture
                        ),
                        new Mark(m.Index, m.Index + m.Length),
                        m.Groups["n"].Value.Contains(',', StringComparison.Ordinal)
                    )
                ),
        ];

    /// <summary>Takes a date of test out of a line: one with its label, or a bare month and year beside percentages.</summary>
    internal static string TakeTestMonth(string line, out TestMonth? test, out string? assumed)
    {
        (test, assumed) = (null, null);
        var m = TestDate().Match(line);
        bool isBare = !m.Success && line.Contains('%', StringComparison.Ordinal);
        m = isBare ? BareDate().Match(line) : m;
        if (!m.Success)
        {
            return line;
        }

        string yearText = m.Groups["y"].Value;
        int year = int.Parse(yearText, CultureInfo.InvariantCulture);
        int month = m.Groups["name"].Success
            ? Array.IndexOf(MonthNames, m.Groups["name"].Value[..3].ToLowerInvariant()) + 1
            : int.Parse(m.Groups["m"].Value, CultureInfo.InvariantCulture);
        if (month is < 1 or > 12 || (yearText.Length == 4 && !TestMonth.IsYear(year)))
        {
            return line;
        }

        test = TestMonth.FromYearAndMonth(yearText.Length == 2 ? 2000 + year : year, month);
        assumed = yearText.Length == 2 || m.Groups["d"].Success || isBare ? m.Groups["date"].Value.Trim() : null;
        return line.Remove(m.Index, m.Length);
    }

    /// <summary>Takes a labelled text such as a lot number out of a line.</summary>
    internal static string Take(Regex field, string line, out string? value)
    {
        var m = field.Match(line);
        value = m.Success ? m.Groups["v"].Value.Trim(' ', ':', '.', ',') : null;
        return m.Success ? line.Remove(m.Index, m.Length) : line;
    }

    [GeneratedRegex(
        @"(?<![\w.])(?<n>\d{1,3}(?:[.,]\d{1,3})?|\.\d{1,3})\s*(?:%|percent\b)?(?![\w.])",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Number();

    [GeneratedRegex(
        @"\btotal\s+viab\w*(?:\s+seeds?)?|\btotal\s+germ\w*\.?"
            + AndHard
            + @"|\btotal\s+germ\w*|\bgerm\w*\.?"
            + AndHard
            + @"|\btotal\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex TotalLabel();

    [GeneratedRegex(@"\bgerm(?:ination|inating|\.)?(?!\w)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex GerminationLabel();

    [GeneratedRegex(
        @"\bhard(?:\s+seeds?)?\b(?!\s+(?:red|white|fescue|winter))",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex HardLabel();

    [GeneratedRegex(@"\bdormant(?:\s+seeds?)?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex DormantLabel();

    [GeneratedRegex(
        @"\b(?:other\s+)?crop(?:\s+seeds?)?\b|\bother\s+crops?\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex OtherCropLabel();

    [GeneratedRegex(@"\binert(?:\s+(?:matter|material))?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex InertLabel();

    [GeneratedRegex(@"\bweeds?(?:\s+seeds?)?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex WeedLabel();

    [GeneratedRegex(
        @"\bcoating(?:\s+(?:material|matter))?\b|\bcoated\s+(?:material|matter)\b|(?<=\d\s?%?\s?)\bcoated\b(?=\s*(?:$|[,;]))",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex CoatingLabel();

    [GeneratedRegex(@"\bpure\s+live(?:\s+seeds?)?\b|\bpls\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex PureLiveLabel();

    [GeneratedRegex(@"\bpure(?:\s+seeds?)?\b|\bpurity\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex PureLabel();

    [GeneratedRegex(
        @"\b(?:date\s+(?:of\s+)?test(?:ed)?|test(?:ed|\s+date)?|germ\w*\s+test\s+date)\s*[:.]?\s*"
            + @"(?<date>(?:(?<name>jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*"
            + @"\.?[\s,/-]*|(?<m>\d{1,2})[/-](?:(?<d>\d{1,2})[/-])?)(?<y>\d{4}|\d{2})\b)",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex TestDate();

    [GeneratedRegex(@"(?<![\d./])(?<date>(?<m>\d{1,2})/(?<y>\d{4}|\d{2}))(?![\d/.%])", RegexOptions.CultureInvariant)]
    private static partial Regex BareDate();

    [GeneratedRegex(
        @"\blot(?:\s*(?:no|number|#))?\s*[.:#]*\s*(?<v>(?=\S*\d)[\w-]+)",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    internal static partial Regex Lot();

    [GeneratedRegex(
        @"\borigin\s*[:.]?\s*(?<v>(?!\b(?:germ|lot|net|test|pure|hard)\b)[A-Za-z]{2,})",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    internal static partial Regex Origin();

    [GeneratedRegex(
        @"\bnet\s*(?:wt|weight)?\s*[.:]*\s*(?<v>\d[\d,.]*\s*(?:lbs?|pounds?|oz|ounces?|kg|g)\b)\.?(?:\s*\([^)]*\))?"
            + @"|^\s*(?<v>\d[\d,.]*\s*(?:lbs?|pounds?|kg)\b)\.?\s*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    internal static partial Regex NetWeight();

    [GeneratedRegex(
        @"^\s*(?:kind(?:\s+(?:and|&)\s+variety)?|crop\s+kind|species)\s*:\s*(?<v>.+?)(?=\s*\bvariety\b|$)",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    internal static partial Regex Kind();

    [GeneratedRegex(
        @"\bvariety\s*:\s*(?<v>not\s+stated|[\w' -]+?)"
            + @"(?=\s*(?:$|[,;|]|\d|\b(?:pure|germ|hard|dormant|inert|origin|lot|net|test)))",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    internal static partial Regex Variety();

    [GeneratedRegex(@"\b(?:variety\s+)?not\s+stated\b|\bvns\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    internal static partial Regex VarietyNotStated();

    [GeneratedRegex(
        @"\bnoxious\b(?:\s+weeds?)?(?:\s+seeds?)?(?:\s*(?:per|/)\s*(?:lb|pound))?\s*[:.]?\s*(?<v>.*)$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    internal static partial Regex Noxious();

    [GeneratedRegex(@"\b(?:treated|treatment)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    internal static partial Regex Treated();

    [GeneratedRegex(
        @"\b(?:sell\s+by|sell\s+before|expir\w*|best\s+(?:by|before)|use\s+by)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    internal static partial Regex LastDay();

    [GeneratedRegex(@"\b(?:un|not\s+)treated\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    internal static partial Regex Untreated();

    [GeneratedRegex(@"\b(?:pre-?)?inoculat(?:ed|ion)\b|\binoculant\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    internal static partial Regex Inoculated();
}
