using System.Globalization;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>Numbers of this room as text, always in the invariant culture.</summary>
internal static class LimeText
{
    /// <summary>A ton is never shown with more than two decimals.</summary>
    internal static string Tons(double poundsPerAcre) => Amounts.Print(poundsPerAcre / ExactUnits.PoundsPerShortTon, 2);

    internal static string Ph(double ph) => Amounts.Print(ph, 2);

    internal static string Inches(Length depth)
    {
        double inches = depth.Inches;
        return Amounts.Print(inches, 2);
    }

    internal static string Date(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    internal static string List(IEnumerable<double> numbers) => string.Join(", ", numbers.Select(n => Amounts.Print(n, 2)));
}
