using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>The rate, or range of rates, printed for one class of a system's scale on one crop.</summary>
internal sealed record ClassRate(
    string ScaleId,
    int Order,
    double Low,
    double High,
    ClassRate.PrintedUnit Unit,
    string SourceId,
    DataStatus Status
)
{
    private static readonly Lazy<ILookup<(string System, CropRow Crop, PlantNutrient Nutrient), ClassRate>> Rates = Table.Grouped(
        "Nutrients/Data/class-rates.csv",
        r => (r.Text("system_id"), r.Choice<CropRow>("crop"), r.Choice<PlantNutrient>("nutrient")),
        FromRow
    );

    internal enum PrintedUnit
    {
        PoundsPerAcre,
        KilogramsPerHectare,
        PoundsPerTonOfYield,
    }

    internal bool IsLegalMaximum => Unit == PrintedUnit.KilogramsPerHectare;

    internal bool AsksForYield => Unit == PrintedUnit.PoundsPerTonOfYield;

    internal string Words
    {
        get
        {
            string range = NutrientWords.Range(Low, High);
            return Unit switch
            {
                PrintedUnit.PoundsPerAcre => $"{range} lb/ac",
                PrintedUnit.KilogramsPerHectare => $"{range} kg/ha at most",
                _ => $"{range} lb for each ton",
            };
        }
    }

    internal static IEnumerable<ClassRate> For(string systemId, CropRow crop, PlantNutrient nutrient) =>
        Rates.Value[(systemId, crop, nutrient)];

    internal ApplicationRate ToRate(double printed, double yield) =>
        Unit switch
        {
            PrintedUnit.KilogramsPerHectare => ApplicationRate.FromKilogramsPerHectare(printed),
            PrintedUnit.PoundsPerTonOfYield => ApplicationRate.FromPoundsPerAcre(printed * yield),
            _ => ApplicationRate.FromPoundsPerAcre(printed),
        };

    internal string WorkFor(double yield) =>
        Unit switch
        {
            PrintedUnit.PoundsPerTonOfYield => string.Create(
                CultureInfo.InvariantCulture,
                $"{Low} to {High} lb/ton x {yield:0.###} ton/ac = {Low * yield:0.0} to {High * yield:0.0} lb/ac"
            ),
            PrintedUnit.KilogramsPerHectare => string.Create(
                CultureInfo.InvariantCulture,
                $"at most {Low} kg/ha = {ToRate(Low, yield).PoundsPerAcre:0.0} lb/ac"
            ),
            _ => string.Create(CultureInfo.InvariantCulture, $"{Low} lb/ac"),
        };

    private static ClassRate FromRow(CsvRow row) =>
        new(
            row.Text("scale_id"),
            row.Integer("class_order"),
            row.Number("rate_low"),
            row.Number("rate_high"),
            row.Choice<PrintedUnit>("rate_unit"),
            row.SourceId(),
            row.Status()
        );
}
