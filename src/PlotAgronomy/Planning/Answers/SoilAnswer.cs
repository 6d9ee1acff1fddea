using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>What the report itself says, before anything is bought.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SoilAnswer
{
    private readonly PlotPlan plan;

    internal SoilAnswer(PlotPlan plan) => this.plan = plan;

    /// <summary>Gets what is to be remarked on the report, most serious first.</summary>
    public ImmutableArray<Finding> ReportFindings =>
        plan.Report is { PrintsReadings: true } report ? report.CheckOn(plan.PlantingDate) : [];

    /// <summary>Gets the readings in the classes of the report's own institution; open where none of its is known, with a case
    /// for each system that could rate them.</summary>
    public Answer<SoilRatings> Ratings => SoilSolver.Ratings(plan);

    /// <summary>Gets the exchange capacity and what holds it: by the acidity the laboratory printed, else by its buffer, else as
    /// the sum of the bases on a soil that is near neutral. Not needed where the report prints no base.</summary>
    public Answer<CationBalance> Exchange => SoilSolver.Exchange(plan.ReportOrNone);

    /// <summary>Gets how and when to take the next sample, by the careful rule for small plots.</summary>
    public Answer<SamplingAdvice> Sampling => SoilSolver.Sampling(plan);

    /// <summary>Gets how to take the sample that is missing, and what can be settled before; not needed where
    /// a laboratory saw the soil.</summary>
    public Answer<SamplingCard> Card =>
        plan.IsTested ? Answers.NoneNeeded<SamplingCard>() : Answers.Given(new SamplingCard(plan, Sampling.Value));

    /// <summary>Gets what the published rules for sulfur, magnesium and trace nutrients say of these kinds, each by its name,
    /// where the report lets them answer. Rules disagree; the need asks for one of them alone.</summary>
    public ImmutableArray<SecondaryAnswer> Secondary => SoilSolver.Secondary(plan);

    /// <summary>What stands open here.</summary>
    internal IEnumerable<OpenQuestion> Questions => [.. Ratings.Questions, .. Exchange.Questions, .. Sampling.Questions];

    /// <summary>The results that no section of the sheet tells.</summary>
    internal IEnumerable<IWorkedResult?> WithoutSection =>
        [Ratings.OrNull(), Exchange.OrNull(), Sampling.OrNull(), Card.OrNull(), .. Secondary];

    /// <summary>The ratings.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"soil ratings {Ratings}";
}
