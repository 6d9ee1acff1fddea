using System.Globalization;

namespace PlotAgronomy.Record;

/// <summary>Numbers are alike to 1e-12 of themselves; everything else, decimals too, to the letter.</summary>
/// <remarks>A text that became a word of an enumeration stays the same word: <c>small grain</c> and <c>SmallGrain</c>.</remarks>
internal static class SameValue
{
    private const double Tolerance = 1e-12;
    private const NumberStyles Styles =
        NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    internal static bool Holds(string old, string now) =>
        old == now || Word(old).Equals(Word(now), StringComparison.OrdinalIgnoreCase)
        || (TryNumber(old, out double before) && TryNumber(now, out double after)
            && Math.Abs(before - after) <= Tolerance * Math.Max(Math.Abs(before), Math.Abs(after)));

    private static string Word(string text) => text.All(c => char.IsAsciiLetter(c) || c is ' ' or '-')
        ? text.Replace(" ", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal)
        : text;

    internal static bool TryNumber(string word, out double number) =>
        double.TryParse(word, Styles, CultureInfo.InvariantCulture, out number)
        && double.IsFinite(number);
}
