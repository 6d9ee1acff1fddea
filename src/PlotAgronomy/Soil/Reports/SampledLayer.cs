using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace PlotAgronomy.Soil;

/// <summary>The layer of soil a concentration is spread through: what turns ppm into lb/ac.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SampledLayer
{
    private readonly Func<SampledLayer, string> describe;

    private SampledLayer(
        double depthInches,
        double soilPoundsPerAcre,
        Func<SampledLayer, string> describe,
        string poundsFormulaId,
        string ppmFormulaId,
        params ImmutableArray<FormulaPlace> formulaValues
    )
    {
        DepthInches = depthInches;
        SoilPoundsPerAcre = soilPoundsPerAcre;
        this.describe = describe;
        PoundsFormulaId = poundsFormulaId;
        PpmFormulaId = ppmFormulaId;
        FormulaValues = formulaValues;
    }

    /// <summary>Gets the acre furrow slice: 6 2/3 in, by convention 2,000,000 lb, so that lb/ac = 2 x ppm.</summary>
    public static SampledLayer FurrowSlice { get; } =
        new(
            SliceInches,
            SlicePounds,
            static _ => $"acre furrow slice of {Amounts.Print(SlicePounds, 0)} lb",
            "pounds-in-furrow-slice",
            "ppm-of-furrow-slice",
            new FormulaPlace("million lb of soil", SlicePounds / 1e6, 4)
        );

    /// <summary>Gets the depth.</summary>
    public Length Depth => Length.FromInches(DepthInches);

    /// <summary>Gets the soil in the layer.</summary>
    public ApplicationRate SoilMass => ApplicationRate.FromPoundsPerAcre(SoilPoundsPerAcre);

    /// <summary>Gets the layer in words.</summary>
    public string Description => describe(this);

    /// <summary>Gets where its soil weight stands and how well that is known.</summary>
    public Origin Origin => SoilFormulas.All[PoundsFormulaId].Origin!;

    /// <summary>Id of the formula from ppm to lb/ac in this layer.</summary>
    internal string PoundsFormulaId { get; }

    /// <summary>Id of the formula from lb/ac to ppm.</summary>
    internal string PpmFormulaId { get; }

    /// <summary>The places of both formulas that the layer fills.</summary>
    internal ImmutableArray<FormulaPlace> FormulaValues { get; }

    /// <summary>lb/ac in an inch for each mg/dm3, as a place of a formula.</summary>
    internal static FormulaPlace Inch => new("lb/ac in an inch", SoilUnitMath.PoundsPerAcreInch, 4);

    private static double SliceInches => SoilConstants.All["furrow-slice-depth"];

    private static double SlicePounds => SoilConstants.All["furrow-slice-soil"];

    internal double DepthInches { get; }

    internal double SoilPoundsPerAcre { get; }

    /// <summary>A layer of any depth with the furrow slice's conventional weight per inch (300,000 lb).</summary>
    /// <param name="depth">Depth; above 0, at most 48 in.</param>
    /// <returns>The layer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, above 48 in, NaN or infinite.</exception>
    /// <remarks>lb/ac = ppm x 2 x depth / 6 2/3 in. Common practice.</remarks>
    public static SampledLayer FromDepth(Length depth)
    {
        double inches = Inches(depth);
        return new(
            inches,
            SoilUnitMath.SoilPoundsPerAcreByDepth(SlicePounds, inches, SliceInches),
            static layer =>
                $"{Amounts.Print(layer.DepthInches, 2)} in at {Amounts.Print(SlicePounds / SliceInches, 0)} lb per acre-inch",
            "pounds-in-depth",
            "ppm-of-depth",
            new FormulaPlace("million lb in the furrow slice", SlicePounds / 1e6, 4),
            new FormulaPlace("furrow slice", SliceInches, 4, "in"),
            DepthOf(inches)
        );
    }

    /// <summary>The layer a printed depth stands for: 6 to 7 in is the furrow slice,
    /// anything else is scaled by its depth.</summary>
    /// <param name="depth">Depth; above 0, at most 48 in.</param>
    /// <returns>The layer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, above 48 in, NaN or infinite.</exception>
    /// <remarks>Common practice: laboratories that double ppm do so for samples of 6 to 7 in alike.</remarks>
    public static SampledLayer Conventional(Length depth) =>
        Inches(depth) >= SoilConstants.All["conventional-depth-low"]
        && Inches(depth) <= SoilConstants.All["conventional-depth-high"]
            ? FurrowSlice
            : FromDepth(depth);

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
        Guard.AboveUpTo(gramsPerCubicCentimeter, 0, SoilConstants.All["densest-soil"], "g/cm3", nameof(bulkDensity));
        return new(
            inches,
            SoilUnitMath.SoilPoundsPerAcre(gramsPerCubicCentimeter, inches),
            layer =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{layer.DepthInches:0.##} in at {gramsPerCubicCentimeter:0.##} g/cm3"
                ),
            "pounds-in-measured-soil",
            "ppm-of-measured-soil",
            new FormulaPlace("g/cm3", gramsPerCubicCentimeter, 2, "g/cm3"),
            DepthOf(inches),
            Inch
        );
    }

    /// <summary>Text such as <c>acre furrow slice of 2,000,000 lb</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Description;

    /// <summary>A depth as a place of a formula.</summary>
    internal static FormulaPlace DepthOf(double inches) => new("depth", inches, 2, "in");

    /// <summary>A depth that a layer may have.</summary>
    internal static Length Checked(Length depth, string name = "depth")
    {
        Inches(depth, name);
        return depth;
    }

    private static double Inches(Length depth, string name = "depth")
    {
        double inches = depth.Inches;
        return Guard.AboveUpTo(inches, 0, SoilConstants.All["layer-depth-high"], "in", name);
    }
}
