using System.Globalization;

namespace PlotAgronomy.Nutrients;

/// <summary>Prints plain numbers in the invariant culture.</summary>
internal static class Print
{
    internal static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    internal static string Tenths(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);
}
