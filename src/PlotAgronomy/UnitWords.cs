using System.Globalization;
using System.Text.RegularExpressions;

namespace PlotAgronomy;

/// <summary>The short list of unit words for one quantity, with exact factors to the unit it is held in.</summary>
internal sealed partial class UnitWords
{
    private const NumberStyles PlainNumber = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    // How large and small an amount may be. These are no numbers of agronomy, which live in tables: they are what the types bear,
    // and the rooms above have their own, much narrower limits with their sources. The root lies under the room that reads
    // tables, so they stand here, each with its reason.

    /// <summary>Largest amount, in the unit it is held in. A time holds 9e11 s, money 7.9e28: the product of two amounts of this
    /// size and a price of a million still fits both.</summary>
    private const double Most = 1e11;

    /// <summary>Smallest amount above zero: a reciprocal, a square or a quotient by <see cref="Most"/> keeps all its
    /// digits.</summary>
    private const double Least = 1e-15;

    /// <summary>Most decimals printed: more than a double holds.</summary>
    private const int MostDecimals = 15;

    /// <summary>A mass for each area; held in lb/ac.</summary>
    internal static readonly UnitWords Rates = new(
        "a rate",
        "'40 lb/ac' or '2.25 ton/ac'",
        ("lb/ac|lb/acre|lbs/ac|lbs/acre|lb/a|lbs/a|lb per acre|lbs per acre|pounds per acre", 1),
        ("oz/ac|oz/acre", 1.0 / 16),
        ("ton/ac|ton/acre|tons/ac|tons/acre|ton/a|tons/a|t/a|ton per acre|tons per acre", 2000),
        ("lb/1000 ft2|lb/1000 sq ft|lb/1,000 ft2", ExactUnits.SquareFeetPerAcre / 1000),
        ("oz/1000 ft2|oz/1000 sq ft|oz/1,000 ft2", ExactUnits.SquareFeetPerAcre / 1000 / 16),
        ("lb/100 ft2|lb/100 sq ft", ExactUnits.SquareFeetPerAcre / 100),
        ("kg/ha", ExactUnits.SquareMetersPerAcre / 10_000 / ExactUnits.KilogramsPerPound),
        ("t/ha|tonne/ha", ExactUnits.SquareMetersPerAcre / 10 / ExactUnits.KilogramsPerPound),
        ("g/m2|g/m²", ExactUnits.SquareMetersPerAcre / 1000 / ExactUnits.KilogramsPerPound)
    );

    private readonly Dictionary<string, double> factors = new(StringComparer.OrdinalIgnoreCase);
    /// <summary>The unit that a word is half of, as "lb" is of "lb/ac".</summary>
    private readonly Dictionary<string, string> wholes = new(StringComparer.OrdinalIgnoreCase);
    private readonly string expectation;

    /// <param name="quantity">Such as "an area".</param>
    /// <param name="examples">Such as "'0.62 ac' or '26,000 ft2'".</param>
    /// <param name="words">All spellings of a unit separated by '|', and its factor.</param>
    internal UnitWords(string quantity, string examples, params ReadOnlySpan<(string Spellings, double Factor)> words)
    {
        var printed = new List<string>();
        foreach (var (spellings, factor) in words)
        {
            var each = spellings.Split('|');
            printed.Add(each[0]);
            foreach (string word in each)
            {
                factors.Add(word, factor);
                int counted = word.IndexOf('/', StringComparison.Ordinal);
                if (counted > 0)
                {
                    wholes.TryAdd(word[..counted], each[0]);
                }
            }
        }

        expectation = $"expected {quantity} such as {examples} (units: {string.Join(", ", printed)})";
    }

    internal bool TryRead(string? text, bool mayBeNegative, out double value, out string problem)
    {
        value = 0;
        string trimmed = (text ?? "").Trim();
        int end = 0;
        while (end < trimmed.Length && (char.IsAsciiDigit(trimmed[end]) || trimmed[end] is '.' or ',' or '-' or '+'))
        {
            end++;
        }

        string number = trimmed[..end];
        string unit = string.Join(' ', trimmed[end..].Split(' ', StringSplitOptions.RemoveEmptyEntries));
        if (!TryNumber(number, out double amount))
        {
            problem = $"{expectation}, found '{trimmed}'";
            return false;
        }

        if (unit.Length == 0)
        {
            problem = $"no unit in '{trimmed}': {expectation}";
            return false;
        }

        if (!factors.TryGetValue(unit, out double factor))
        {
            problem = Unknown(number, unit, trimmed);
            return false;
        }

        if (amount < 0 && !mayBeNegative)
        {
            problem = $"'{trimmed}' is negative: {expectation}";
            return false;
        }

        double held = Math.Abs(amount * factor);
        if (held > Most || held is > 0 and < Least)
        {
            string size = held > Most ? "large" : "small";
            problem = $"'{trimmed}' is too {size} to reckon with: {expectation}";
            return false;
        }

        // Adding 0 makes a written "-0" a plain 0.
        value = (amount * factor) + 0.0;
        problem = "";
        return true;
    }

    /// <summary>A weight where a rate is wanted is half of one: the ground it is for is missing.</summary>
    private string Unknown(string number, string unit, string typed) =>
        wholes.TryGetValue(unit, out string? whole)
            ? $"'{typed}' lacks what it is counted by, such as '{number} {whole}': {expectation}"
            : $"unknown unit '{unit}' in '{typed}': {expectation}";

    internal string Print(double value, string unit, int? decimals)
    {
        if (!factors.TryGetValue(unit, out double factor))
        {
            throw new ArgumentException($"Unknown unit '{unit}': {expectation}.", nameof(unit));
        }

        double amount = value / factor;
        string digits = decimals is int places ? Rounded(amount, places) : ExactText.Of(amount);
        return $"{digits} {unit}";
    }

    /// <summary>A number rounded to nearest, commas between groups of three digits; no 0 has a minus.</summary>
    internal static string Rounded(double number, int decimals)
    {
        Guard.Between(decimals, 0, MostDecimals, "decimals");
        string places = decimals > 0 ? $".{new string('#', decimals)}" : "";
        string digits = number.ToString($"#,##0{places}", CultureInfo.InvariantCulture);
        return digits == "-0" ? "0" : digits;
    }

    /// <summary>Reads an amount in two units, such as <c>12 ft 6 in</c> or <c>1 lb 9 oz</c>; what is no such text is left to the
    /// plain reader.</summary>
    /// <param name="text">Text of a person.</param>
    /// <param name="greater">The greater unit.</param>
    /// <param name="smaller">The smaller one, of which less than one greater may follow.</param>
    /// <param name="held">The amount.</param>
    internal bool TryReadMixed(string? text, string greater, string smaller, out double held)
    {
        held = 0;
        var mixed = InTwoUnits().Match(text ?? "");
        if (
            !mixed.Success
            || !IsUnit(mixed.Groups["unit"].Value, greater)
            || !IsUnit(mixed.Groups["part"].Value, smaller)
            || !TryRead($"{mixed.Groups["whole"].Value} {greater}", false, out double whole, out _)
            || !TryRead($"{mixed.Groups["rest"].Value} {smaller}", false, out double rest, out _)
            || rest >= factors[greater]
        )
        {
            return false;
        }

        held = whole + rest;
        return true;
    }

    private bool IsUnit(string word, string unit) => factors.TryGetValue(word, out double factor) && factor.Equals(factors[unit]);

    internal static string PrintFeetAndInches(double feet, int decimals)
    {
        Guard.Between(decimals, 0, MostDecimals, "decimals");
        double inches = Math.Round(feet * ExactUnits.InchesPerFoot, decimals, MidpointRounding.AwayFromZero);
        double whole = Math.Floor(inches / ExactUnits.InchesPerFoot);
        string rest = Rounded(inches - whole * ExactUnits.InchesPerFoot, decimals);
        return string.Create(CultureInfo.InvariantCulture, $"{whole:#,##0} ft {rest} in");
    }

    /// <summary>Reads 1234.5 or 1,234.5; a comma may only stand before groups of exactly three digits.</summary>
    private static bool TryNumber(string text, out double amount)
    {
        amount = 0;
        return NumberAsWritten().IsMatch(text)
            && double.TryParse(
                text.Replace(",", "", StringComparison.Ordinal),
                PlainNumber,
                CultureInfo.InvariantCulture,
                out amount
            )
            && double.IsFinite(amount);
    }

    [GeneratedRegex(@"^\s*(?<whole>[0-9]+)\s*(?<unit>[A-Za-z]+|')\.?,?\s*(?<rest>[0-9.]+)\s*(?<part>[A-Za-z]+|"")\.?\s*$")]
    private static partial Regex InTwoUnits();

    [GeneratedRegex(@"^[+-]?([0-9]{1,3}(,[0-9]{3})+|[0-9]+|(?=\.[0-9]))(\.[0-9]+)?$")]
    private static partial Regex NumberAsWritten();
}
