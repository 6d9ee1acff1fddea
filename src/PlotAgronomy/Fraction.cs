using System.Globalization;

namespace PlotAgronomy;

/// <summary>A part of a whole, from 0 to 1, that says whether it was written as a fraction or in percent.</summary>
/// <remarks>0.9 and 90 % are the same fraction; 0.9 % is not. The default is zero. Equality is exact.</remarks>
/// <example>
/// <code>
/// var germination = Fraction.FromPercent(78);
/// Console.WriteLine($"{germination} is {germination.Value}");
/// // 78 % is 0.78
/// </code>
/// </example>
[JsonConverter(typeof(JsonTextConverter<Fraction>))]
public readonly record struct Fraction : IComparable<Fraction>, IJsonText<Fraction>
{
    private Fraction(double value) => Value = value;

    /// <summary>Gets nothing of the whole.</summary>
    public static Fraction Zero => default;

    /// <summary>Gets the whole.</summary>
    public static Fraction One => new(1);

    /// <summary>Gets the part as a pure number from 0 to 1.</summary>
    public double Value { get; }

    /// <summary>Gets the part in percent, from 0 to 100.</summary>
    public double Percent => Value * 100;

    /// <summary>Creates a fraction from a number from 0 to 1.</summary>
    /// <param name="value">Part of the whole; from 0 to 1.</param>
    /// <returns>The fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below 0, above 1, NaN or infinite.</exception>
    public static Fraction FromValue(double value) => new(Guard.Between(value, 0, 1, "(a part of one whole; 90 % is 0.9)"));

    /// <summary>Creates a fraction from percent.</summary>
    /// <param name="percent">Part of the whole in percent; from 0 to 100.</param>
    /// <returns>The fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below 0, above 100, NaN or infinite.</exception>
    public static Fraction FromPercent(double percent) => new(Guard.Between(percent, 0, 100, "%") / 100);

    /// <inheritdoc/>
    public int CompareTo(Fraction other) => Value.CompareTo(other.Value);

    /// <summary>Compares two fractions.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when left is smaller.</returns>
    public static bool operator <(Fraction left, Fraction right) => left.Value < right.Value;

    /// <summary>Compares two fractions.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when left is greater.</returns>
    public static bool operator >(Fraction left, Fraction right) => left.Value > right.Value;

    /// <summary>Compares two fractions.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when left is smaller or equal.</returns>
    public static bool operator <=(Fraction left, Fraction right) => left.Value <= right.Value;

    /// <summary>Compares two fractions.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when left is greater or equal.</returns>
    public static bool operator >=(Fraction left, Fraction right) => left.Value >= right.Value;

    /// <summary>Invariant text such as <c>92.5 %</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Percent:0.##} %");

    static string IJsonText<Fraction>.ToJsonText(Fraction value) => $"{ExactText.Of(value.Value, shift: 2)} %";

    static Fraction IJsonText<Fraction>.FromJsonText(string text) => FromValue(ExactText.Number(text, "%", shift: 2));
}
