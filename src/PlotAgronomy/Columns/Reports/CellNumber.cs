using System.Buffers;
using System.Globalization;
using System.Text.RegularExpressions;

namespace PlotAgronomy.Columns;

/// <summary>The number in a cell as laboratories and spreadsheets write it: with a unit, with a decimal comma, less than a limit;
/// or why it is none.</summary>
/// <param name="Value">Number.</param>
/// <param name="IsUpperLimit">Whether the cell says that the value lies below it.</param>
/// <param name="Unit">What stands behind the number; empty for nothing.</param>
internal readonly partial record struct CellNumber(double Value, bool IsUpperLimit, string Unit)
{
    private static readonly SearchValues<char> DigitsAndPoint = SearchValues.Create("0123456789.");

    private static readonly string[] SignsOfNothing = ["", "-", "--", "n/a", "na", "n.a.", "nt", "not tested", "not stated"];

    /// <summary>Whether a cell says that nothing was measured.</summary>
    internal static bool IsMissing(string cell) => SignsOfNothing.Contains(cell, StringComparer.OrdinalIgnoreCase);

    internal static bool TryRead(string cell, out CellNumber number, out string problem)
    {
        const NumberStyles WithPointAlone = NumberStyles.AllowDecimalPoint;
        if (
            IsPlain(cell)
            && double.TryParse(cell, WithPointAlone, CultureInfo.InvariantCulture, out double plain)
            && double.IsFinite(plain)
        )
        {
            (number, problem) = (new(plain, false, ""), "");
            return true;
        }

        number = default;
        if (cell.StartsWith('>'))
        {
            problem = $"'{cell}': more than a limit is no value";
            return false;
        }

        bool isBelow = cell.StartsWith('<');
        string text = isBelow ? cell[1..].TrimStart() : cell;
        string mended = text.Replace('O', '0').Replace('o', '0').Replace('l', '1').Replace('I', '1');
        if (mended != text && LettersAmongDigits().IsMatch(text) && TryNumber(mended, out _))
        {
            problem = $"'{cell}' has a letter for a digit: is it {mended}?";
            return false;
        }

        var match = NumberAndUnit().Match(text);
        if (!match.Success || !TryNumber(match.Groups["number"].Value, out double value))
        {
            problem = $"'{cell}' is no number";
            return false;
        }

        (number, problem) = (new(value, isBelow, match.Groups["unit"].Value.Trim()), "");
        return true;
    }

    /// <summary>Nearly every cell is, and then nothing has to be looked for.</summary>
    private static bool IsPlain(string cell) => cell.AsSpan().IndexOfAnyExcept(DigitsAndPoint) < 0;

    /// <summary>A comma before three digits parts thousands, before any other number of them it is a decimal comma.</summary>
    private static bool TryNumber(string text, out double value)
    {
        string plain =
            WithPoint().IsMatch(text) ? text.Replace(",", "", StringComparison.Ordinal)
            : WithComma().IsMatch(text) ? text.Replace(".", "", StringComparison.Ordinal).Replace(',', '.')
            : "";
        return double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
    }

    [GeneratedRegex(@"^(?<number>[-+0-9.,]+)\s*(?<unit>[%A-Za-z][-%A-Za-z0-9/ ]*)?$")]
    private static partial Regex NumberAndUnit();

    [GeneratedRegex(@"^[-+0-9.,OolI]*[0-9][-+0-9.,OolI]*$")]
    private static partial Regex LettersAmongDigits();

    [GeneratedRegex(@"^[-+]?([0-9]{1,3}(,[0-9]{3})+|[0-9]+|(?=\.[0-9]))(\.[0-9]+)?$")]
    private static partial Regex WithPoint();

    [GeneratedRegex(@"^[-+]?([0-9]{1,3}(\.[0-9]{3})+|[0-9]+),[0-9]+$")]
    private static partial Regex WithComma();
}
