using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>A nutrient a system does not answer for on this report, why, and which systems would.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class UnansweredNutrient
{
    private readonly RecommendationSystem system;
    private readonly SystemRequest question;
    private readonly string code;
    private readonly Func<UnansweredNutrient, string>? reason;
    private readonly bool isRated;

    /// <param name="system">System.</param>
    /// <param name="question">What it was asked.</param>
    /// <param name="nutrient">Nutrient.</param>
    /// <param name="code">Code of its finding.</param>
    /// <param name="reason">The reason in one sentence; null where it is what the system accepts.</param>
    /// <param name="isRated">Whether the system rates the reading.</param>
    internal UnansweredNutrient(
        RecommendationSystem system,
        SystemRequest question,
        PlantNutrient nutrient,
        string code,
        Func<UnansweredNutrient, string>? reason = null,
        bool isRated = false
    )
    {
        this.system = system;
        this.question = question;
        this.code = code;
        this.reason = reason;
        this.isRated = isRated;
        Nutrient = nutrient;
    }

    /// <summary>Gets the nutrient.</summary>
    public PlantNutrient Nutrient { get; }

    /// <summary>Gets the reason in one sentence.</summary>
    public string Reason => reason?.Invoke(this) ?? system.WhyOutsideDomain(Nutrient, question);

    /// <summary>Gets the systems that take this crop row and the report's test; empty when none does.</summary>
    public ImmutableArray<RecommendationSystem> ServedBy =>
        [.. system.Siblings().Where(s => s != system && s.WouldServe(question.Soil, question.Crop.Row, Nutrient))];

    /// <summary>Whether the soil itself lies outside the system.</summary>
    internal bool IsForSoil => code == NutrientCodes.OrganicSoil;

    /// <summary>Whether it is left unanswered for the value of its reading alone: another value of the same test may be
    /// answered.</summary>
    internal bool IsForValue =>
        code is NutrientCodes.BeyondPrintedTable or NutrientCodes.RatesNotHeld or NutrientCodes.YesWithoutRate;

    /// <summary>Whether only a fact is missing that the user can tell, such as a yield.</summary>
    internal bool LacksFact => code == NutrientCodes.FactMissing;

    /// <summary>Gets the rating, when the system rates the reading but prints no rate.</summary>
    public NutrientRating? Rating => isRated ? system.RatingOf(question, Nutrient) : null;

    /// <summary>Gets the same as a remark for the sheet, with the systems that would serve.</summary>
    public Finding Finding
    {
        get
        {
            var others = ServedBy;
            return FindingCatalog.Create(
                code,
                ("system", system.Name),
                ("nutrient", SoilWords.For(Nutrient)),
                ("reason", Reason),
                ("others", others.IsEmpty ? "none is known here" : string.Join(", ", others.Select(s => s.Id)))
            );
        }
    }

    /// <summary>Nutrient and reason.</summary>
    /// <returns>Text such as <c>K2O: ...</c>.</returns>
    public override string ToString() => $"{SoilWords.For(Nutrient)}: {Reason}";
}
