using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using PlotAgronomy.PlanFiles;

namespace PlotAgronomy.Sample.Commands;

/// <summary>Answers as people type them; the words a field of the plan file takes come from its declaration.</summary>
internal static partial class StartWords
{
    private const int MostToldAtOnce = 12;

    private static readonly string[] Unknown =
    [
        "",
        "?",
        "-",
        "i don't know",
        "i dont know",
        "don't know",
        "dont know",
        "idk",
        "not known",
        "unknown",
        "no idea",
        "not stated",
        "not sure",
        "none",
        "no",
    ];

    private static readonly Lazy<JsonNode> Schema = new(() => JsonNode.Parse(PlanSchema.ToJson())!);

    /// <summary>The parts of a plan in the order of its schema.</summary>
    internal static IEnumerable<string> PartsOfPlan => Schema.Value["properties"]!.AsObject().Select(p => p.Key);

    /// <summary>An answer with plain quotes, dashes and blanks.</summary>
    internal static string Plain(string line) =>
        Blanks().Replace(line.Replace('\u2019', '\'').Replace('\u2013', '-').Replace('\u00D7', 'x'), " ").Trim();

    internal static bool IsUnknown(string answer) => Unknown.Contains(answer.TrimEnd('.', '!').ToLowerInvariant());

    internal static bool IsBack(string answer) => answer.Equals("back", StringComparison.OrdinalIgnoreCase);

    internal static bool IsStop(string answer) => answer.Equals("stop", StringComparison.OrdinalIgnoreCase);

    /// <summary>Parts of a line, parted by semicolons or commas; a comma between digits parts thousands.</summary>
    internal static string[] Parts(string line) => [.. PartedBy().Split(line).Select(p => p.Trim()).Where(p => p.Length > 0)];

    /// <summary>The words that a field takes.</summary>
    internal static string[] Of(string part, string field)
    {
        var shape = part == "plan" ? Schema.Value : Schema.Value["$defs"]![part]!;
        var declared = shape["properties"]![field]!;
        var words = declared["enum"] ?? declared["anyOf"]!.AsArray().Select(a => a!["enum"]).First(e => e is not null);
        return [.. words!.AsArray().Select(w => w!.GetValue<string>())];
    }

    /// <summary>One of several words, by its number in the list, in full, or by a part that no other has.</summary>
    internal static string Chosen(string answer, IReadOnlyList<string> words)
    {
        if (int.TryParse(answer, NumberStyles.None, CultureInfo.InvariantCulture, out int number))
        {
            return number >= 1 && number <= words.Count
                ? words[number - 1]
                : throw new BadAnswerException($"a number from 1 to {words.Count}, please");
        }

        string said = answer.Replace('-', ' ');
        bool IsSaid(string word) => word.Replace('-', ' ').Equals(said, StringComparison.OrdinalIgnoreCase);
        bool Holds(string word) => word.Replace('-', ' ').Contains(said, StringComparison.OrdinalIgnoreCase);
        string[] fitting = words.Any(IsSaid) ? [words.First(IsSaid)] : [.. words.Where(Holds)];
        return fitting.Length == 1
            ? fitting[0]
            : throw new BadAnswerException(WhichOf(answer, fitting.Length > 1 ? fitting : words));
    }

    /// <summary>The words with their numbers.</summary>
    internal static string Numbered(IEnumerable<string> words) =>
        string.Join("  ", words.Select((w, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1} {w.Replace('-', ' ')}")));

    /// <summary>A plain number, with or without a sign of money.</summary>
    internal static JsonNode Number(string text) =>
        decimal.TryParse(
            text.TrimStart('$', '\u00A3', '\u20AC').Trim(),
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowThousands,
            CultureInfo.InvariantCulture,
            out decimal number
        )
            ? JsonValue.Create(number)
            : throw new BadAnswerException($"'{text}' is no number");

    private static string WhichOf(string answer, IReadOnlyList<string> words)
    {
        var told =
            words.Count <= MostToldAtOnce
                ? words
                : [.. words.Where(w => char.ToLowerInvariant(w[0]) == char.ToLowerInvariant(answer[0]))];
        string which = told.Count == 0 ? "write it in full" : string.Join(", ", told);
        return $"'{answer}' is none or several of them: {which}";
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex(@"\s*;\s*|,(?!\d{3}(?!\d))")]
    private static partial Regex PartedBy();
}
