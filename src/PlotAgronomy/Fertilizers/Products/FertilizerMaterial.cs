using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>A straight material or starter solution with its published figures. Every figure has its own source and
/// status.</summary>
/// <remarks>A figure that was not yet seen in its publication is null here and answers only through
/// <see cref="FromMemory"/>.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed partial class FertilizerMaterial
{
    private readonly CatalogFigure?[] figures;

    internal FertilizerMaterial(
        string id,
        string name,
        FertilizerSubstance substance,
        MaterialForm form,
        FertilizerAnalysis analysis,
        FertilizerAnalysis whole,
        Origin analysisOrigin,
        Source? otherSource,
        CatalogFigure?[] figures
    )
    {
        Whole = whole;
        Id = id;
        Name = name;
        Substance = substance;
        Form = form;
        Analysis = analysis;
        AnalysisOrigin = analysisOrigin;
        OtherSource = otherSource;
        this.figures = figures;
    }

    /// <summary>Gets the id, such as <c>urea-granular</c>.</summary>
    public string Id { get; }

    /// <summary>Gets the name of the trade.</summary>
    public string Name { get; }

    /// <summary>Gets what it is, as far as cautions and mixing rules ask.</summary>
    public FertilizerSubstance Substance { get; }

    /// <summary>Gets its form, such as granule or liquid.</summary>
    internal MaterialForm Form { get; }

    /// <summary>Gets the usual analysis; the label of the lot in hand goes before it. Nutrients from memory beside those that
    /// were read are left out:
    /// see <see cref="AnalysisFromMemory"/>.</summary>
    public FertilizerAnalysis Analysis { get; }

    /// <summary>Gets where the analysis stands and how well that is known.</summary>
    public Origin AnalysisOrigin { get; }

    /// <summary>Gets the status of the analysis.</summary>
    public DataStatus AnalysisStatus => AnalysisOrigin.Status;

    /// <summary>Gets the caution of an analysis that was not yet checked against a publication, or null.</summary>
    public Finding? AnalysisCaution =>
        AnalysisStatus == DataStatus.Memory ? MemoryGate.FindingFor($"{Name}, analysis", AnalysisOrigin) : null;

    /// <summary>Gets the source of the nutrients that have another one than the analysis; null where none have.</summary>
    internal Source? OtherSource { get; }

    /// <summary>A published figure that was checked; <see cref="FromMemory"/> gives one that was not.</summary>
    /// <param name="property">Property.</param>
    /// <returns>The figure in the unit of the property, or null when none was read.</returns>
    public CatalogFigure? Figure(MaterialProperty property) =>
        figures[(int)Guard.Defined(property)] is { Status: not DataStatus.Memory } figure ? figure : null;

    /// <summary>Gets the salt index per pound of plant nutrient (N + P2O5 + K2O); null without a checked salt index or without
    /// these nutrients.</summary>
    public double? SaltIndexPerUnitOfNutrient =>
        Figure(MaterialProperty.SaltIndex) is { } index && PrimarySum(Analysis) is > 0 and var sum ? index.Value / sum : null;

    /// <summary>Gets the acidity per lb N in lb CaCO3; negative when it acidifies; null without a checked lime value or without
    /// nitrogen.</summary>
    public double? LimeValuePerPoundOfNitrogen =>
        Figure(MaterialProperty.LimeValue) is { } lime && Analysis.Percent(PlantNutrient.Nitrogen) is > 0 and var percent
            ? lime.Value / percent
            : null;

    /// <summary>A figure that was not yet checked against its publication, asked for by name.</summary>
    /// <param name="property">Property.</param>
    /// <returns>The figure and the caution it carries, or null when there is none from memory.</returns>
    public (CatalogFigure Figure, Finding Caution)? FromMemory(MaterialProperty property) =>
        figures[(int)Guard.Defined(property)] is { Status: DataStatus.Memory } figure
            ? (figure, MemoryGate.FindingFor($"{Name}, {FertilizerWords.Properties[property]}", figure.Origin))
            : null;

    /// <summary>The analysis with the nutrients that were not yet checked against a publication, such as the calcium of triple
    /// superphosphate.</summary>
    /// <returns>The analysis and the caution it carries, or null when there is none from memory.</returns>
    public (FertilizerAnalysis Analysis, Finding Caution)? AnalysisFromMemory() =>
        FertilizerAnalysis.AreAlike(Analysis, Whole)
            ? null
            : (Whole, MemoryGate.FindingFor($"{Name}, other nutrients", [Source.Practice]));

    /// <summary>Name and grade.</summary>
    /// <returns>Text such as <c>urea, granular (46-0-0)</c>.</returns>
    public override string ToString() => $"{Name} ({Analysis})";

    /// <summary>The analysis with what is known from memory, for recognising a label.</summary>
    internal FertilizerAnalysis Whole { get; }

    internal static double PrimarySum(FertilizerAnalysis analysis) =>
        analysis.Percent(PlantNutrient.Nitrogen)
        + analysis.Percent(PlantNutrient.Phosphate)
        + analysis.Percent(PlantNutrient.Potash);
}
