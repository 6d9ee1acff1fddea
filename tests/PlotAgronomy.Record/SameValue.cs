using System.Globalization;

namespace PlotAgronomy.Record;

/// <summary>Numbers are alike to 1e-12 of themselves; everything else, decimals too, to the letter.</summary>
internal static class SameValue
{
    private const double Tolerance = 1e-12;
    private const NumberStyles Styles =
        NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    internal static bool Holds(string old, string now) =>
        old == now || (TryNumber(old, out double before) && TryNumber(now, out double after)
            && Math.Abs(before - after) <= Tolerance * Math.Max(Math.Abs(before), Math.Abs(after)));

    internal static bool TryNumber(string word, out double number) =>
        double.TryParse(word, Styles, CultureInfo.InvariantCulture, out number)
        && double.IsFinite(number);
}
