using System.Collections.Immutable;
using System.Text;

namespace PlotAgronomy.Reference;

/// <summary>A text with places in braces, such as <c>No rate for {nutrient}</c>.</summary>
/// <remarks>A word that ends in <c>(s)</c>, as in <c>{days} day(s)</c>, is in the singular where the place before it holds
/// 1.</remarks>
internal sealed class TextWithPlaces
{
    private readonly ImmutableArray<(string Text, bool IsPlace)> parts;

    private const string MaybePlural = "(s)";

    internal TextWithPlaces(string template)
    {
        Template = template;
        parts = Split(template);
    }

    internal string Template { get; }

    internal ImmutableArray<string> Places => [.. parts.Where(p => p.IsPlace).Select(p => p.Text).Distinct()];

    /// <summary>The text with the names of its places in place of their values.</summary>
    internal string Named => string.Concat(parts.Select(p => p.Text));

    /// <summary>The text with every place filled; a value may itself hold braces, since it may be a person's own words.</summary>
    /// <param name="values">Values by place; a place may stay unused.</param>
    /// <exception cref="InvalidOperationException">A place has no value.</exception>
    internal string Filled(params ReadOnlySpan<(string Place, string Value)> values)
    {
        var filled = new StringBuilder();
        string before = "";
        foreach (var (text, isPlace) in parts)
        {
            filled.Append(
                isPlace
                    ? before = ValueOf(text, values)
                    : text.Replace(MaybePlural, Amounts.PluralOf(before), StringComparison.Ordinal)
            );
        }

        return filled.ToString();
    }

    private string ValueOf(string place, ReadOnlySpan<(string Place, string Value)> values)
    {
        foreach (var (name, value) in values)
        {
            if (name == place)
            {
                return value;
            }
        }

        throw new InvalidOperationException($"'{Template}' has a place that was not filled: {{{place}}}");
    }

    private static ImmutableArray<(string Text, bool IsPlace)> Split(string template)
    {
        var parts = ImmutableArray.CreateBuilder<(string, bool)>();
        int at = 0;
        for (int open = template.IndexOf('{', StringComparison.Ordinal); open >= 0; open = template.IndexOf('{', at))
        {
            int close = template.IndexOf('}', open);
            if (close < 0)
            {
                throw new FormatException($"'{template}' has a brace that is not closed.");
            }

            parts.Add((template[at..open], false));
            parts.Add((template[(open + 1)..close], true));
            at = close + 1;
        }

        parts.Add((template[at..], false));
        return parts.ToImmutable();
    }
}
