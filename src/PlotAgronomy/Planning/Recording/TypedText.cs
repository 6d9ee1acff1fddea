using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using PlotAgronomy.Records;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>What a person typed about one thing that was done or seen: the day is taken out, the rest is read by its
/// sort.</summary>
internal sealed partial class TypedText
{
    private TypedText(string rest, DateOnly? on)
    {
        Rest = rest;
        On = on;
    }

    /// <summary>Gets what was typed, without the day.</summary>
    internal string Rest { get; }

    /// <summary>Gets the day; null where none was typed.</summary>
    internal DateOnly? On { get; }

    /// <summary>Finds the day in what was typed.</summary>
    /// <exception cref="FormatException">Two days, or one that is not in the calendar.</exception>
    internal static TypedText Of(string text)
    {
        var days = Day().Matches(text);
        if (days.Count == 0)
        {
            return new(text.Trim(), null);
        }

        return days.Count == 1 && IsoDay.TryRead(days[0].Groups["day"].Value, out var on)
            ? new(Day().Replace(text, " ").Trim().Trim(',', ';').Trim(), on)
            : throw new FormatException("one day is wanted, year first, as in 2026-09-20");
    }

    /// <summary>Loads such as <c>18 bags</c>, <c>18 bags of 40 lb</c> or <c>10 bags on 0.3 ac + 120 lb on 0.2 ac</c>.</summary>
    internal static ImmutableArray<SpreadLoad> Loads(string text, Mass? bag) =>
        [.. text.Split('+', StringSplitOptions.TrimEntries).Select(load => Load(load, bag))];

    internal static Mass Weight(string text) =>
        Amounts.TryReadMass(text, out var mass, out string problem) ? mass : throw new FormatException(problem);

    internal static Length Depth(string text) =>
        Amounts.TryReadLength(text, out var length, out string problem) ? length : throw new FormatException(problem);

    internal static Area Ground(string text) =>
        Amounts.TryReadArea(text, out var area, out string problem) ? area : throw new FormatException(problem);

    internal static Fraction Percent(string text) =>
        Amounts.TryReadPercent(text, out var part, out string problem) ? part : throw new FormatException(problem);

    internal static CropKind Kind(string text) =>
        KindCatalog.Standard.TryFind(text.Trim(), out var kind, out string problem) ? kind : throw new FormatException(problem);

    /// <summary>Whole numbers, such as the plants in each hoop.</summary>
    internal static ImmutableArray<int> Counts(string text, string what) =>
        [
            .. text.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries)
                .Select(word =>
                    int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int count)
                        ? count
                        : throw new FormatException($"{what} is wanted in whole numbers, found '{word}'")
                ),
        ];

    /// <summary>The text before and after a mark; after it null where the mark is missing.</summary>
    internal static (string Before, string? After) Halves(string text, string mark)
    {
        int at = text.LastIndexOf(mark, StringComparison.OrdinalIgnoreCase);
        return at < 0 ? (text.Trim(), null) : (text[..at].Trim(), text[(at + mark.Length)..].Trim());
    }

    private static SpreadLoad Load(string text, Mass? bag)
    {
        var (amount, where) = Halves(text, " on ");
        Area? on = where is null ? null : Ground(where);
        var counted = Bags().Match(amount);
        if (!counted.Success)
        {
            return SpreadLoad.FromWeight(Weight(amount), on);
        }

        double bags = double.Parse(counted.Groups["bags"].Value, CultureInfo.InvariantCulture);
        string full = counted.Groups["bag"].Value;
        return SpreadLoad.FromBags(
            bags,
            full.Length > 0 ? Weight(full) : bag ?? throw new FormatException("say what a bag weighs: 18 bags of 40 lb"),
            on
        );
    }

    [GeneratedRegex(@"(?:\bon\s+)?(?<day>\d{4}-\d{1,2}-\d{1,2})", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Day();

    [GeneratedRegex(
        @"^(?<bags>\d+(?:\.\d+)?|\.\d+)\s*bags?(?:\s+of\s+(?<bag>.+))?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Bags();
}
