using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>The most fertilizer that may lie near seed in the row. No urea, UAN or thiosulfate there at all.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedPlacedLimit
{
    private static readonly Table<SeedPlacedLimit> Everything = new("Fertilizers/Data/seed-placed-limits.csv", FromRow);

    private SeedPlacedLimit(
        SeedRowCrop crop,
        Length? spacingLow,
        Length? spacingHigh,
        SeedRowSoil soil,
        CountedNutrients counted,
        SeedRowPlacement placement,
        ApplicationRate? limit,
        Fraction? partOfCorn,
        Origin origin
    )
    {
        Crop = crop;
        RowSpacingLow = spacingLow;
        RowSpacingHigh = spacingHigh;
        Soil = soil;
        Counted = counted;
        Placement = placement;
        Limit = limit;
        PartOfCornLimit = partOfCorn;
        Origin = origin;
    }

    /// <summary>Gets every row, in the order of the table.</summary>
    public static ImmutableArray<SeedPlacedLimit> All => Everything.Rows;

    /// <summary>Gets the crop.</summary>
    public SeedRowCrop Crop { get; }

    /// <summary>Gets the narrowest row spacing, or null for any.</summary>
    public Length? RowSpacingLow { get; }

    /// <summary>Gets the widest row spacing, or null for any.</summary>
    public Length? RowSpacingHigh { get; }

    /// <summary>Gets the soil.</summary>
    public SeedRowSoil Soil { get; }

    /// <summary>Gets what is counted.</summary>
    public CountedNutrients Counted { get; }

    /// <summary>Gets where the fertilizer lies.</summary>
    public SeedRowPlacement Placement { get; }

    /// <summary>Gets the limit; null when it is stated as a part of corn's.</summary>
    public ApplicationRate? Limit { get; }

    /// <summary>Gets the part of corn's limit, or null.</summary>
    public Fraction? PartOfCornLimit { get; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>Most product in the row within this limit.</summary>
    /// <param name="analysis">Guaranteed analysis of the product.</param>
    /// <returns>Rate of product; null when the row states no rate of its own, or the product brings nothing that is
    /// counted.</returns>
    /// <remarks>product = 100 x limit / (sum of the counted percents).</remarks>
    public ApplicationRate? MostProduct(FertilizerAnalysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        double counted = CountedPercent(analysis);
        return Limit is { } limit && counted > 0
            ? ApplicationRate.FromPoundsPerAcre(FertilizerMath.ProductFor(limit.PoundsPerAcre, counted))
            : null;
    }

    /// <summary>Limit for the same crop, soil and placement at another row spacing: the limit goes with the feet of row on an
    /// acre.</summary>
    /// <param name="spacing">Row spacing; above 0.</param>
    /// <returns>The limit, or null when the row states no spacing or no rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Spacing not above 0.</exception>
    /// <remarks>limit = printed limit x printed spacing / spacing.</remarks>
    public SeedPlacedLimit? AtRowSpacing(Length spacing)
    {
        double inches = spacing.Inches;
        Guard.Above(inches, 0, "in", nameof(spacing));
        if (Limit is not { } limit || RowSpacingLow is not { } printed)
        {
            return null;
        }

        double printedInches = printed.Inches;
        var scaled = limit * (printedInches / inches);
        return new(Crop, spacing, spacing, Soil, Counted, Placement, scaled, partOfCorn: null, Origin);
    }

    /// <summary>Percent of a product that this limit counts.</summary>
    internal double CountedPercent(FertilizerAnalysis analysis) =>
        Counted switch
        {
            CountedNutrients.NitrogenPotash => analysis.Percent(PlantNutrient.Nitrogen) + analysis.Percent(PlantNutrient.Potash),
            CountedNutrients.NitrogenPotashSulfur => analysis.Percent(PlantNutrient.Nitrogen)
                + analysis.Percent(PlantNutrient.Potash)
                + analysis.Percent(PlantNutrient.Sulfur),
            _ => 100,
        };

    /// <summary>Whether a material must stay out of the seed row altogether.</summary>
    internal static bool IsBarredFromTheRow(FertilizerSubstance substance) =>
        substance
            is FertilizerSubstance.Urea
                or FertilizerSubstance.UreaAmmoniumNitrateSolution
                or FertilizerSubstance.AmmoniumThiosulfate;

    private static SeedPlacedLimit FromRow(CsvRow row) =>
        new(
            row.Choice<SeedRowCrop>("crop"),
            Inches(row.NumberOrNull("row_spacing_low_in")),
            Inches(row.NumberOrNull("row_spacing_high_in")),
            row.Choice<SeedRowSoil>("soil"),
            row.Choice<CountedNutrients>("counted"),
            row.Choice<SeedRowPlacement>("placement"),
            row.NumberOrNull("limit_lb_per_ac") is { } limit ? ApplicationRate.FromPoundsPerAcre(limit) : null,
            row.NumberOrNull("of_corn_pct") is { } percent ? Fraction.FromPercent(percent) : null,
            row.Origin()
        );

    private static Length? Inches(double? inches) => inches is { } value ? Length.FromInches(value) : null;

    /// <summary>The crop and the limit.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        Limit is { } limit
            ? $"{FertilizerWords.SeedRowCrops[Crop]}: at most {Amounts.Print(limit, decimals: 1)}"
            : $"{FertilizerWords.SeedRowCrops[Crop]}: {PartOfCornLimit} of the limit of corn";
}
