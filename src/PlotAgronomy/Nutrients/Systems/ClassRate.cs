using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>The rate, or range of rates, printed for one class of a system's scale on one crop.</summary>
internal sealed record ClassRate(
    string System,
    CropRow Crop,
    PlantNutrient Nutrient,
    string ScaleId,
    int Order,
    double Low,
    double High,
    ClassRate.PrintedUnit Unit,
    Origin Origin
)
{
    private static readonly Table<ClassRate> Table = new("Nutrients/Data/class-rates.csv", FromRow);

    internal enum PrintedUnit
    {
        PoundsPerAcre,
        KilogramsPerHectare,
        PoundsPerTonOfYield,
    }

    internal bool IsLegalMaximum => Unit == PrintedUnit.KilogramsPerHectare;

    internal bool IsRange => High > Low;

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

    internal static ImmutableArray<ClassRate> Of(string systemId) => [.. Table.Rows.Where(r => r.System == systemId)];

    internal ApplicationRate ToRate(double printed, double yield) =>
        Unit switch
        {
            PrintedUnit.KilogramsPerHectare => ApplicationRate.FromKilogramsPerHectare(printed),
            PrintedUnit.PoundsPerTonOfYield => ApplicationRate.FromPoundsPerAcre(SystemMath.ByYield(printed, yield)),
            _ => ApplicationRate.FromPoundsPerAcre(printed),
        };

    internal WorkedLine Line(PlantNutrient nutrient, string rating, double yield)
    {
        string answer = $"{NutrientWords.Range(ToRate(Low, yield), ToRate(High, yield))} lb/ac";
        string name = SoilWords.For(nutrient);
        var line = Unit switch
        {
            PrintedUnit.PoundsPerTonOfYield => NutrientFormulas
                .All["montana-pounds-a-ton"]
                .Line(
                    answer,
                    ("nutrient", name),
                    ("pounds a ton", NutrientWords.Range(Low, High)),
                    ("tons an acre", NutrientFormulas.Number(yield))
                ),
            PrintedUnit.KilogramsPerHectare => NutrientFormulas
                .All["metric-legal-maximum"]
                .Line(answer, ("nutrient", name), ("kg/ha", NutrientFormulas.Number(Low))),
            _ => NutrientFormulas.All["rate-as-printed"].Line(answer, ("what", $"{name}, class {rating}")),
        };
        return line.From(Origin.FirstSource);
    }

    private static ClassRate FromRow(CsvRow row) =>
        new(
            row.Text("system_id"),
            row.Choice<CropRow>("crop"),
            row.Choice<PlantNutrient>("nutrient"),
            row.Text("scale_id"),
            row.Integer("class_order"),
            row.Number("rate_low"),
            row.Number("rate_high"),
            row.Choice<PrintedUnit>("rate_unit"),
            row.Origin()
        );
}
