using System.Globalization;

namespace PlotAgronomy;

/// <summary>Numbers as text with every digit and no exponent, so that the same number is read back.</summary>
internal static class ExactText
{
    private const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    /// <param name="value">Number.</param>
    /// <param name="shift">Places to move the decimal point to the right: 2 writes a part of one as percent.</param>
    internal static string Of(double value, int shift = 0)
    {
        string sign = double.IsNegative(value) ? "-" : "";
        var (digits, point) = Split(double.Abs(value).ToString("R", CultureInfo.InvariantCulture));
        point += shift;
        string whole = point <= 0 ? "0" : digits[..Math.Min(point, digits.Length)].PadRight(point, '0').TrimStart('0');
        string rest = point <= 0 ? new string('0', -point) + digits : digits[Math.Min(point, digits.Length)..];
        string decimals = rest.TrimEnd('0');
        string dot = decimals.Length > 0 ? "." : "";
        string ones = whole.Length == 0 ? "0" : whole;
        return $"{sign}{ones}{dot}{decimals}";
    }

    /// <summary>Reads what <see cref="Of"/> wrote with the same shift.</summary>
    /// <exception cref="FormatException">Not a plain number.</exception>
    internal static double Number(string text, int shift = 0) =>
        double.TryParse(text, Plain, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value)
            ? shift == 0
                ? value
                : double.Parse(FormattableString.Invariant($"{text}E{-shift}"), CultureInfo.InvariantCulture)
            : throw new FormatException($"Expected a number, found '{text}'.");

    /// <summary>Reads a number before a unit.</summary>
    /// <exception cref="FormatException">Another unit, or not a plain number.</exception>
    internal static double Number(string text, string unit, int shift = 0) => Number(Before(text, $" {unit}"), shift);

    /// <summary>The text before its end.</summary>
    /// <exception cref="FormatException">It ends otherwise.</exception>
    internal static string Before(string text, string end) =>
        text.EndsWith(end, StringComparison.Ordinal)
            ? text[..^end.Length]
            : throw new FormatException($"Expected a text that ends with '{end.Trim()}', found '{text}'.");

    /// <summary>The text before and after a mark that stands in it once.</summary>
    /// <exception cref="FormatException">It does not stand there, or more than once.</exception>
    internal static (string Before, string After) Halves(string text, string mark)
    {
        string[] halves = text.Split(mark);
        return halves.Length == 2
            ? (halves[0], halves[1])
            : throw new FormatException($"Expected two parts with '{mark.Trim()}' between them, found '{text}'.");
    }

    /// <summary>Digits without a point, and how many of them stand before it.</summary>
    private static (string Digits, int Point) Split(string round)
    {
        string[] parts = round.Split('E');
        int dot = parts[0].IndexOf('.', StringComparison.Ordinal);
        int point = dot < 0 ? parts[0].Length : dot;
        int exponent = parts.Length == 2 ? int.Parse(parts[1], CultureInfo.InvariantCulture) : 0;
        return (parts[0].Replace(".", "", StringComparison.Ordinal), point + exponent);
    }
}
