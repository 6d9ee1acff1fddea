using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>Builds reports, crops and settings for the tests of this room.</summary>
internal static class SystemRequests
{
    internal static SoilReport Report(params SoilReading[] readings) => new() { Laboratory = "a laboratory", Readings = [.. readings] };

    internal static SoilReading P(double value, SoilTestUnit unit, Extractant extractant) => SoilReading.FromPrinted(SoilAnalyte.Phosphorus, value, unit, extractant);

    internal static SoilReading K(double value, SoilTestUnit unit, Extractant extractant) => SoilReading.FromPrinted(SoilAnalyte.Potassium, value, unit, extractant);

    internal static SoilReading PIndex(double value) => P(value, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3);

    internal static SoilReading KIndex(double value) => K(value, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3);

    internal static CropYield YieldFor(CropRow row, double perAcre) =>
        row is CropRow.Corn or CropRow.Soybean or CropRow.Wheat or CropRow.Oat or CropRow.SmallGrain or CropRow.GrainSorghum or CropRow.CornAndSoybean
            ? CropYield.FromBushelsPerAcre(perAcre) : CropYield.FromTonsPerAcre(perAcre);

    internal static PlotSoil Known(SoilReport report, double milliequivalents) => PlotSoil.For(report) with { ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(milliequivalents) };

    internal static PlantNutrient NutrientOf(CsvRow row) => row.Choice<PlantNutrient>("nutrient");

    internal static NutrientRecommendation Ask(CsvRow row)
    {
        var analyte = NutrientOf(row) == PlantNutrient.Phosphate ? SoilAnalyte.Phosphorus : SoilAnalyte.Potassium;
        var reading = SoilReading.FromPrinted(analyte, row.Number("test"), row.Choice<SoilTestUnit>("test_unit"), row.Choice<Extractant>("extractant"));
        var second = row.NumberOrNull("second_test") is { } other
            ? SoilReading.FromPrinted(analyte == SoilAnalyte.Potassium ? SoilAnalyte.Phosphorus : SoilAnalyte.Potassium, other, row.Choice<SoilTestUnit>("test_unit"), row.Choice<Extractant>("extractant"))
            : null;
        var crop = row.Choice<CropRow>("crop");
        CropYield? yield = row.NumberOrNull("yield") is { } perAcre ? YieldFor(crop, perAcre) : null;
        var use = row.TextOrNull("carried_off") == "yes" ? CropUse.CarriedOff(crop, yield!.Value) : CropUse.Browsed(crop, yield);
        use = use with { BuildUpYears = row.NumberOrNull("years") is { } years ? (int)years : null };
        return RecommendationSystem.Find(row.Text("system")).Recommend(Known(second is null ? Report(reading) : Report(reading, second), row), use);
    }

    /// <summary>A report with what else a row of worked examples states.</summary>
    internal static PlotSoil Known(SoilReport report, CsvRow row) => PlotSoil.For(report with
    {
        SampleMoisture = Optional<SampleMoisture>(row, "moisture"),
        PrintedPhosphorusRating = row.TextOrNull("printed_p_rating"),
    }) with
    {
        ExchangeCapacity = row.NumberOrNull("cec") is { } cec ? CationCharge.FromMilliequivalentsPer100Grams(cec) : report.PrintedExchangeCapacity,
        SoilClass = Optional<SoilClass>(row, "soil_class") ?? report.SoilClass,
        Region = row.TextOrNull("region") is { } region ? SoilRegion.Find(region) : null,
        PhosphorusSupply = Optional<SoilSupply>(row, "supply"),
        ExchangeCapacityGroup = Optional<SoilSupply>(row, "group"),
    };

    private static T? Optional<T>(CsvRow row, string column) where T : struct, Enum => row.TextOrNull(column) is null ? null : row.Choice<T>(column);
}
