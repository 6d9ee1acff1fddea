using System.Globalization;

namespace PlotAgronomy.Seeds;

/// <summary>What rates of bulk seed and of pure live seed share: an amount per area and how it is sown.</summary>
internal readonly record struct SownRate(ApplicationRate Rate, SowingMethod Method)
{
    internal static SownRate Of(ApplicationRate rate, SowingMethod method) => new(rate, Guard.Defined(method));

    internal static SownRate OfPounds(double poundsPerAcre, SowingMethod method) =>
        new(ApplicationRate.FromPoundsPerAcre(poundsPerAcre), method);

    public static SownRate operator *(SownRate rate, double factor) => rate with { Rate = rate.Rate * factor };

    public static double operator /(SownRate left, SownRate right) =>
        left.Method == right.Method
            ? left.Rate / right.Rate
            : throw new ArgumentException($"A {left.Method} rate cannot be divided by a {right.Method} rate.", nameof(right));

    /// <param name="counted">What the pounds are, such as <c>lb PLS</c>.</param>
    internal string InWords(string counted) =>
        string.Create(CultureInfo.InvariantCulture, $"{Rate.PoundsPerAcre:0.###} {counted}/ac, {SowingMethods.InWords(Method)}");

    internal string ToJsonText(string counted) =>
        $"{ExactText.Of(Rate.PoundsPerAcre)} {counted}/ac, {SowingMethods.InWords(Method)}";

    /// <exception cref="FormatException">A text of another form.</exception>
    internal static SownRate FromJsonText(string text, string counted)
    {
        var (rate, sown) = ExactText.Halves(text, ", ");
        foreach (var (method, word) in SowingMethods.Words.All)
        {
            if (word == sown)
            {
                return OfPounds(ExactText.Number(rate, $"{counted}/ac"), method);
            }
        }

        throw new FormatException($"Unknown way of sowing '{sown}'.");
    }
}
