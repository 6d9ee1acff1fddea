using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Sheets;

/// <summary>Numbers as they are rounded for the sheet. Rounding happens here and nowhere before.</summary>
internal static class SheetText
{
    /// <summary>Less than this is dust of arithmetic, not a leftover.</summary>
    private const double LeastLeftOverPounds = 0.005;

    internal static string Weight(Mass mass) => Amounts.PrintForScale(mass);

    internal static string Weight(BulkSeedMass seed) => Weight(Mass.FromPounds(seed.Pounds));

    internal static string LeftOver(Mass mass)
    {
        double pounds = mass.Pounds;
        return pounds < LeastLeftOverPounds ? "none" : Weight(mass);
    }

    internal static string LeftOver(BulkSeedMass seed) => LeftOver(Mass.FromPounds(seed.Pounds));

    internal static string Name(CropKind kind) => kind.ShortName;

    internal static string Rate(ApplicationRate rate) =>
        Amounts.Print(
            rate,
            "lb/ac",
            rate.PoundsPerAcre >= 20 ? 0
                : rate.PoundsPerAcre >= 2 ? 1
                : 2
        );

    internal static string Tons(ApplicationRate rate) => Amounts.Print(rate, "ton/ac", 2);

    internal static string Distance(Length length) => Amounts.Print(length, "ft", 0);

    internal static string Minutes(TimeSpan time) => Amounts.Print(time, "min", time.TotalMinutes < 10 ? 1 : 0);

    internal static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>How well the numbers of a row are known.</summary>
    internal static string Standing(DataStatus status) =>
        status == DataStatus.Memory ? "from memory" : DataStatuses.Words[status];

    /// <summary>What a row of a comparison marked as from memory means.</summary>
    internal const string FromMemory =
        "Rows from memory: their numbers were not yet checked against the publication; compare with the printed table before "
        + "relying on them. [data-from-memory]";

    /// <summary>Laboratory, day and depth of a report.</summary>
    internal static string Origin(SoilReport report)
    {
        string sampled = report.SampledOn is { } day ? Date(day) : "on an unknown day";
        string deep = report.SampledDepth is { } depth ? $", {Amounts.Print(depth, "in", 1)} deep" : "";
        return $"Report of {report.Laboratory}, sampled {sampled}{deep}.";
    }

    /// <summary>What a report says of the soil's acidity.</summary>
    internal static string Acidity(SoilReport report)
    {
        string water = report.WaterPh is { } ph
            ? $"Soil pH in water {Amounts.Print(ph.Value, 1)}"
            : "Soil pH in water not printed";
        string buffer = string.Concat(
            report.BufferPhs.Select(b => $"; {SoilWords.Buffers[b.Buffer]} buffer pH {Amounts.Print(b.Value, 2)}")
        );
        string exchangeable = report.ExchangeableAcidity is { } acidity ? $"; exchangeable acidity {acidity}" : "";
        return $"{water}{buffer}{exchangeable}.";
    }

    internal static string Symbol(PlantNutrient nutrient) => PlantNutrients.Symbols[nutrient];

    internal static string Nutrient(PlantNutrient nutrient) => PlantNutrients.InFull(nutrient);
}
