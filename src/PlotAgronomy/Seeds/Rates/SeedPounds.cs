using System.Globalization;
using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>What weights of bulk seed and of pure live seed share.</summary>
internal readonly record struct SeedPounds(double Value)
{
    internal static SeedPounds Of(Mass mass)
    {
        double pounds = mass.Pounds;
        return new(Guard.AtLeast(pounds, 0, "lb", nameof(mass)));
    }

    internal static SeedPounds From(double pounds) => new(Guard.AtLeast(pounds, 0, "lb"));

    public static SeedPounds operator +(SeedPounds left, SeedPounds right) => new(left.Value + right.Value);

    /// <param name="counted">What the pounds are, such as <c>lb PLS</c>.</param>
    internal string InWords(string counted) => string.Create(CultureInfo.InvariantCulture, $"{Value:0.###} {counted}");
}
