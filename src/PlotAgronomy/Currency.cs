using System.Globalization;

namespace PlotAgronomy;

/// <summary>The one currency a plan's prices are in, by its ISO 4217 letters. Amounts are <see cref="decimal"/> and are never
/// converted.</summary>
/// <example>
/// <code>
/// Console.WriteLine(Currency.FromCode("USD").Print(182m));
/// // 182.00 USD
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed class Currency
{
    private Currency(string code) => Code = code;

    /// <summary>Gets a currency that nobody named: amounts are plain numbers.</summary>
    public static Currency Unnamed { get; } = new("");

    /// <summary>Gets the three letters, such as <c>USD</c>; empty where nobody named it.</summary>
    public string Code { get; }

    /// <summary>Names a currency.</summary>
    /// <param name="code">Three capital letters of ISO 4217.</param>
    /// <returns>The currency.</returns>
    /// <exception cref="ArgumentException">Not three capital letters.</exception>
    public static Currency FromCode(string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        return code.Length == 3 && code.All(char.IsAsciiLetterUpper)
            ? new Currency(code)
            : throw new ArgumentException(
                $"Must be the three capital letters of an ISO 4217 currency such as USD, found '{code}'.",
                nameof(code)
            );
    }

    /// <summary>The head of a column of costs.</summary>
    internal string CostColumn => Code.Length == 0 ? "cost" : $"cost, {Code}";

    /// <summary>Prints an amount of money, rounded to hundredths for reading.</summary>
    /// <param name="amount">Amount.</param>
    /// <returns>Text such as <c>12.50 USD</c>.</returns>
    public string Print(decimal amount) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Round(amount, 2, MidpointRounding.AwayFromZero):#,##0.00} {Code}")
            .TrimEnd();

    /// <summary>The three letters.</summary>
    /// <returns>The code; <c>no named currency</c> without one.</returns>
    public override string ToString() => Code.Length == 0 ? "no named currency" : Code;
}
