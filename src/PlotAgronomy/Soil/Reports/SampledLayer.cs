using System.Globalization;
using UnitsNet;

namespace PlotAgronomy.Soil;

/// <summary>The layer of soil a concentration is spread through: what turns ppm into lb/ac.</summary>
public sealed class SampledLayer
{
    /// <summary>Depth of the acre furrow slice, 6 2/3 in.</summary>
    internal const double FurrowSliceInches = 20.0 / 3;

    /// <summary>Soil in an acre furrow slice by convention, lb/ac (SOIL-PA5).</summary>
    internal const double FurrowSlicePounds = 2_000_000;

    private SampledLayer(double depthInches, double soilPoundsPerAcre, string description, string sourceId)
    {
        DepthInches = depthInches;
        SoilPoundsPerAcre = soilPoundsPerAcre;
        Description = description;
        SourceId = sourceId;
    }

    /// <summary>Gets the acre furrow slice: 6 2/3 in, by convention 2,000,000 lb, so that lb/ac = 2 x ppm.</summary>
    public static SampledLayer FurrowSlice { get; } =
        new(FurrowSliceInches, FurrowSlicePounds, "acre furrow slice of 2,000,000 lb", "SOIL-PA5");

    /// <summary>Gets the depth.</summary>
    public Length Depth => Length.FromInches(DepthInches);

    /// <summary>Gets the soil in the layer.</summary>
    public ApplicationRate SoilMass => ApplicationRate.FromPoundsPerAcre(SoilPoundsPerAcre);

    /// <summary>Gets the layer in words.</summary>
    public string Description { get; }

    /// <summary>Gets the id of the source of the convention.</summary>
    public string SourceId { get; }

    internal double DepthInches { get; }

    internal double SoilPoundsPerAcre { get; }

    /// <summary>A layer of any depth with the furrow slice's conventional weight per inch (300,000 lb).</summary>
    /// <param name="depth">Depth; above 0, at most 48 in.</param>
    /// <returns>The layer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, above 48 in, NaN or infinite.</exception>
    /// <remarks>lb/ac = ppm x 2 x depth / 6 2/3 in. Common practice.</remarks>
    public static SampledLayer OfDepth(Length depth)
    {
        double inches = Inches(depth);
        return new(
            inches,
            FurrowSlicePounds * inches / FurrowSliceInches,
            string.Create(CultureInfo.InvariantCulture, $"{inches:0.##} in at 300,000 lb per acre-inch"),
            "PRACTICE"
        );
    }

    /// <summary>The layer a printed depth stands for: 6 to 7 in is the furrow slice,
    /// anything else is scaled by its depth.</summary>
    /// <param name="depth">Depth; above 0, at most 48 in.</param>
    /// <returns>The layer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, above 48 in, NaN or infinite.</exception>
    /// <remarks>Common practice: laboratories that double ppm do so for samples of 6 to 7 in alike.</remarks>
    public static SampledLayer Conventional(Length depth) => Inches(depth) is >= 6 and <= 7 ? FurrowSlice : OfDepth(depth);

    /// <summary>A layer whose bulk density was measured.</summary>
    /// <param name="depth">Depth; above 0, at most 48 in.</param>
    /// <param name="bulkDensity">Dry weight per volume in the field; above 0, at most 2.65 g/cm3 (solid mineral).</param>
    /// <returns>The layer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside these limits, NaN or infinite.</exception>
    /// <remarks>lb/ac = ppm x g/cm3 x depth in inches x 0.2266, from exact unit definitions.</remarks>
    public static SampledLayer Measured(Length depth, Density bulkDensity)
    {
        double inches = Inches(depth);
        double gramsPerCubicCentimeter = bulkDensity.GramsPerCubicCentimeter;
        Guard.AboveUpTo(gramsPerCubicCentimeter, 0, 2.65, "g/cm3", nameof(bulkDensity));
        return new(
            inches,
            SoilUnitMath.SoilPoundsPerAcre(gramsPerCubicCentimeter, inches),
            string.Create(CultureInfo.InvariantCulture, $"{inches:0.##} in at {gramsPerCubicCentimeter:0.##} g/cm3"),
            "DEF-UNITS"
        );
    }

    /// <summary>Text such as <c>acre furrow slice of 2,000,000 lb</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Description;

    private static double Inches(Length depth)
    {
        double inches = depth.Inches;
        return Guard.AboveUpTo(inches, 0, 48, "in", nameof(depth));
    }
}
