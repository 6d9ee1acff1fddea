using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Reads a rate in the unit its table prints.</summary>
internal static class LimeUnits
{
    internal static double PoundsPerAcre(CsvRow row, string column) => row.Number(column) * PerUnit(row);

    /// <summary>lb/ac in one of the row's unit.</summary>
    internal static double PerUnit(CsvRow row) =>
        row.Text("unit") switch
        {
            "lb/ac" => 1,
            "ton/ac" => ExactUnits.PoundsPerShortTon,
            "t/ha" => ApplicationRate.FromTonnesPerHectare(1).PoundsPerAcre,
            "lb/1000 ft2" => ApplicationRate.FromPoundsPerThousandSquareFeet(1).PoundsPerAcre,
            "lb/100 ft2" => ApplicationRate.FromPoundsPerThousandSquareFeet(10).PoundsPerAcre,
            var unit => throw row.Problem("unit", $"unknown unit '{unit}'"),
        };
}
