using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;

namespace PlotAgronomy;

/// <summary>What every room makes of a plan, in numbers with their units; sentences are made when they are asked for.</summary>
/// <remarks><see cref="PlanSolver.Solve(PlotPlan)"/> gives them; a field sheet says them.</remarks>
/// <example>
/// <code>
/// var answers = PlanFile.Read(File.ReadAllText("my-plot.json")).Plan!.Solve();
/// Console.WriteLine(answers.Lime.Value.Rate.Value);
/// // 0.7 ton/ac of North Carolina standard agricultural lime to pH 6, 6.67 in deep (North Carolina)
/// Console.WriteLine(answers.Fertilizer.State);
/// // Given
/// Console.WriteLine(answers.Findings[0]);
/// // warning blend-noxious: Chicory: wild type on some state weed lists; check the state list before sowing
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed class PlotAnswers
{
    internal PlotAnswers() { }

    /// <summary>Gets the plan that was solved.</summary>
    public required PlotPlan Plan { get; init; }

    /// <summary>Gets whether each kind may be sown on this plot and day, why not and what would change it; open without a pH,
    /// not needed where nothing is sown and nothing is known to stand there.</summary>
    public required Answer<PlotVerdict> Verdict { get; init; }

    /// <summary>Gets which lime method answers, and who chose it.</summary>
    public required MethodChoice<LimeMethod> LimeMethod { get; init; }

    /// <summary>Gets which recommendation system answers for phosphate and potash, and who chose it.</summary>
    public required MethodChoice<RecommendationSystem> NutrientSystem { get; init; }

    /// <summary>Gets what the report says by itself; open without one, and then with the card to take a sample by.</summary>
    public required Answer<SoilAnswer> Soil { get; init; }

    /// <summary>Gets the nutrients the plot needs; open where the system has no figure from this report.</summary>
    public required Answer<PlotNeed> Need { get; init; }

    /// <summary>Gets the lime the plot needs, and what to order; open without a rate, none needed at a rate of zero.</summary>
    public required Answer<LimeAnswer> Lime { get; init; }

    /// <summary>Gets the fertilizer to buy and spread; open while the need is, or where none is on offer.</summary>
    public required Answer<FertilizerAnswer> Fertilizer { get; init; }

    /// <summary>Gets the seed to weigh out and buy, how crowded the stand will be and whether the kinds fit; open where a kind
    /// has no seed count, or nobody publishes a rate for this way of sowing.</summary>
    public required Answer<SeedAnswer> Seed { get; init; }

    /// <summary>Gets which kinds share the hopper, and how each pass is set; open while the seed is.</summary>
    public required Answer<SpreadingAnswer> Spreading { get; init; }

    /// <summary>Gets every question that stands open, each once, in the order of the work.</summary>
    public ImmutableArray<OpenQuestion> Questions =>
        [
            .. Verdict
                .Questions.Concat(Soil.Questions)
                .Concat(Lime.Questions)
                .Concat(Need.Questions)
                .Concat(Fertilizer.Questions)
                .Concat(Seed.Questions)
                .Concat(Spreading.Questions)
                .Distinct(),
        ];

    /// <summary>Gets the price of all that is known to be bought, in the plan's currency.</summary>
    public decimal TotalCost => Costs.Sum();

    /// <summary>Gets the sum behind <see cref="TotalCost"/>.</summary>
    public WorkedLine TotalCostLine =>
        PlanningFormulas
            .All["plan-shopping-total"]
            .Line(
                $"{string.Join(" + ", Costs.DefaultIfEmpty().Select(c => Plan.Currency.Print(c).Split(' ')[0]))} = "
                    + Plan.Currency.Print(TotalCost)
            );

    /// <summary>Gets everything the rooms remark on, most serious first.</summary>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(
            PlanFindings
                .Of(Plan, Soil.Told, Need.Told, Lime.Told, Fertilizer, Seed.OrNull(), Spreading)
                .Concat(Verdict.Findings)
                .Where(f => f.Code != BlendCodes.PhLow)
                .Concat(Seed.State == AnswerState.Open ? Seed.Findings : [])
        );

    /// <summary>The findings that cannot change what is done.</summary>
    internal ImmutableArray<Finding> Background => BackgroundNotes.Of(Findings, Plan);

    /// <summary>The other findings, said once where they differ in their subject alone.</summary>
    internal ImmutableArray<Finding> ToSay => AlikeFindings.Joined(Findings.Except(Background));

    /// <summary>One price for each line of the shopping list.</summary>
    private IEnumerable<decimal> Costs =>
        [
            .. Lime.Told.Order.OrNull()?.Cost is { } lime ? [lime] : Enumerable.Empty<decimal>(),
            .. Fertilizer.Told.AtSowing.Select(l => l.Cost),
            .. Fertilizer.Told.Later.Select(l => l.Cost),
            .. Seed.OrNull()?.Kinds.Select(k => k.Cost) ?? [],
        ];

    /// <summary>The plan and how its questions stand.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Plan}: {Plan.Currency.Print(TotalCost)}, {Amounts.PrintCount(Questions.Length, "open question")}";
}
