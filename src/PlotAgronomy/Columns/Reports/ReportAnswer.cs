using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Columns;

/// <summary>The answer to one report of a table: lime, phosphate and potash, and where the soil stands.</summary>
/// <remarks>Numbers are kept; need, recommendation and findings are made anew from the report when they are asked for.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class ReportAnswer
{
    private readonly ReportRequest request;

    internal ReportAnswer(TabledReport row, ReportRequest request)
    {
        Row = row;
        this.request = request;
        Crop = request.CropOf(row);
        Lime = LimeNeed?.Published;
        if (Recommendation is { } recommended)
        {
            (Phosphate, Phosphorus) = Of(recommended, PlantNutrient.Phosphate);
            (Potash, Potassium) = Of(recommended, PlantNutrient.Potash);
        }
    }

    /// <summary>Gets the report.</summary>
    public TabledReport Row { get; }

    /// <summary>Gets the crop row; null where nobody names one.</summary>
    public CropRow? Crop { get; }

    /// <summary>Gets the lime as the institution prints it, zero where none is due; null where the method does not
    /// answer.</summary>
    public LimeRate? Lime { get; }

    /// <summary>Gets the need for phosphate (P2O5); null where the system does not answer.</summary>
    public ApplicationRate? Phosphate { get; }

    /// <summary>Gets the need for potash (K2O); null where the system does not answer.</summary>
    public ApplicationRate? Potash { get; }

    /// <summary>Gets where phosphorus stands; null where it is not rated.</summary>
    public RatingStanding? Phosphorus { get; }

    /// <summary>Gets where potassium stands; null where it is not rated.</summary>
    public RatingStanding? Potassium { get; }

    /// <summary>Gets the need for lime with its working; null where none was asked.</summary>
    public LimeNeed? LimeNeed => request.TargetPh is { } target ? request.LimeMethod?.NeedFor(Row.Report, target) : null;

    /// <summary>Gets the recommendation with its working; null where none was asked, or no crop is known.</summary>
    public NutrientRecommendation? Recommendation =>
        request.System is { } system && Crop is { } crop ? system.Recommend(Row.Report, CropUse.Browsed(crop)) : null;

    /// <summary>Gets all findings: of the report itself, of lime and of the recommendation, the most serious first.</summary>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder([
            .. Row.Report.CheckOn(null),
            .. LimeNeed?.Findings ?? [],
            .. Recommendation?.Findings ?? [],
            .. UnknownCrop,
        ]);

    /// <summary>What it comes to.</summary>
    /// <returns>Text such as <c>sample 4711: lime 2,000 lb/ac, P2O5 40 lb/ac, K2O 0 lb/ac</c>.</returns>
    public override string ToString() =>
        $"{Row}: lime {Words(Lime?.OfBasis)}, P2O5 {Words(Phosphate)}, K2O {Words(Potash)}";

    private ImmutableArray<Finding> UnknownCrop =>
        request.System is not null && Crop is null
            ? [FindingCatalog.Create(ColumnCodes.CropUnknown, ("crop", Row.Crop.Length == 0 ? "no crop" : $"'{Row.Crop}'"))]
            : [];

    private static string Words(ApplicationRate? rate) => rate is { } known ? Amounts.Print(known, decimals: 0) : "open";

    private static (ApplicationRate?, RatingStanding?) Of(NutrientRecommendation recommended, PlantNutrient nutrient)
    {
        if (recommended.For(nutrient) is { } need)
        {
            return (need.Rate, need.Rating?.Standing);
        }

        foreach (var unanswered in recommended.Unanswered)
        {
            if (unanswered.Nutrient == nutrient)
            {
                return (null, unanswered.Rating?.Standing);
            }
        }

        return default;
    }
}
