using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>How much of one complete grade goes on, and what that leaves open or overshoots.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SingleProductRate : IWorkedResult
{
    private SingleProductRate(
        FertilizerAnalysis analysis,
        ApplicationRate rate,
        PlantNutrient? setBy,
        ImmutableArray<NutrientBalance> balances,
        RatePolicy policy
    ) => (Analysis, Rate, SetBy, Balances, Policy) = (analysis, rate, setBy, balances, policy);

    /// <summary>Gets the analysis of the product.</summary>
    public FertilizerAnalysis Analysis { get; }

    /// <summary>Gets the rate of product.</summary>
    public ApplicationRate Rate { get; }

    /// <summary>Gets the nutrient that sets the rate; null when the product brings nothing that is needed.</summary>
    public PlantNutrient? SetBy { get; }

    /// <summary>Gets what every nutrient receives beside its need.</summary>
    public ImmutableArray<NutrientBalance> Balances { get; }

    /// <summary>Gets the policy: meet every need, or pass none.</summary>
    internal RatePolicy Policy { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(RateFindings.Of(Balances, FieldConditions.Unknown));

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [Source.Practice];

    /// <summary>The rate that meets every need the product serves, whatever that overshoots.</summary>
    /// <param name="analysis">Guaranteed analysis.</param>
    /// <param name="need">What the plot should receive.</param>
    /// <returns>The rate.</returns>
    /// <remarks>rate = largest of 100 x need / percent over the nutrients needed and held. Caps are not regarded: see the
    /// balances.</remarks>
    public static SingleProductRate MeetingAll(FertilizerAnalysis analysis, PlotNeed need)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        ArgumentNullException.ThrowIfNull(need);
        double rate = 0;
        PlantNutrient? setBy = null;
        foreach (var target in need.Targets)
        {
            double percent = analysis.Percent(target.Nutrient);
            if (percent <= 0 || target.AtLeast <= ApplicationRate.Zero)
            {
                continue;
            }

            double product = FertilizerMath.ProductFor(target.AtLeast.PoundsPerAcre, percent);
            if (setBy is null || product > rate)
            {
                (rate, setBy) = (product, target.Nutrient);
            }
        }

        return Of(analysis, need, rate, setBy, RatePolicy.MeetEveryNeed);
    }

    /// <summary>The rate at which no need and no cap is passed; straights fill what is left.</summary>
    /// <param name="analysis">Guaranteed analysis.</param>
    /// <param name="need">What the plot should receive. A nutrient without a need limits the rate only by its cap.</param>
    /// <returns>The rate; zero when a nutrient the product holds has a cap of zero.</returns>
    /// <remarks>rate = smallest of 100 x limit / percent, where the limit is the need, or the cap where nothing is
    /// needed.</remarks>
    public static SingleProductRate PassingNone(FertilizerAnalysis analysis, PlotNeed need)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        ArgumentNullException.ThrowIfNull(need);
        double rate = 0;
        PlantNutrient? setBy = null;
        bool serves = false;
        foreach (var target in need.Targets)
        {
            double percent = analysis.Percent(target.Nutrient);
            bool isNeeded = target.AtLeast > ApplicationRate.Zero;
            if (percent <= 0 || (isNeeded ? target.AtLeast : target.AtMost) is not { } limit)
            {
                continue;
            }

            serves |= isNeeded;
            double product = FertilizerMath.ProductFor(limit.PoundsPerAcre, percent);
            if (setBy is null || product < rate)
            {
                (rate, setBy) = (product, target.Nutrient);
            }
        }

        if (!serves)
        {
            (rate, setBy) = (0, null);
        }

        return Of(analysis, need, rate, setBy, RatePolicy.PassNoNeedAndNoCap);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        var lines = ImmutableArray.CreateBuilder<WorkedLine>();
        foreach (var balance in Balances.Where(b => b.AtLeast > ApplicationRate.Zero && Analysis.Percent(b.Nutrient) > 0))
        {
            double held = Analysis.Percent(balance.Nutrient);
            double product = FertilizerMath.ProductFor(balance.AtLeast.PoundsPerAcre, held);
            lines.Add(
                FertilizerFormulas
                    .All["product-for-nutrient"]
                    .Line(
                        $"{Amounts.Print(product, 2)} lb/ac",
                        ("product", Analysis.ToString()),
                        ("nutrient", PlantNutrients.Symbols[balance.Nutrient]),
                        ("need", Amounts.Print(balance.AtLeast, decimals: 2)),
                        ("percent", Amounts.Print(held, 4))
                    )
            );
        }

        if (SetBy is { } nutrient)
        {
            double percent = Analysis.Percent(nutrient);
            double limit = FertilizerMath.NutrientIn(Rate.PoundsPerAcre, percent);
            lines.Add(
                FertilizerFormulas
                    .All["product-rate-by-policy"]
                    .Line(
                        Amounts.Print(Rate, decimals: 2),
                        ("policy", FertilizerWords.Policies[Policy]),
                        ("limit", $"{Amounts.Print(limit, 2)} lb/ac"),
                        ("percent", Amounts.Print(percent, 4))
                    )
            );
        }

        lines.AddRange(
            Balances.Select(b =>
                FertilizerFormulas
                    .All["nutrient-in-product"]
                    .Line(
                        b.ToString(),
                        ("nutrient", PlantNutrients.Symbols[b.Nutrient]),
                        ("rate", Amounts.Print(Rate, decimals: 2)),
                        ("percent", Amounts.Print(Analysis.Percent(b.Nutrient), 4))
                    )
            )
        );
        return lines.ToImmutable();
    }

    private static SingleProductRate Of(
        FertilizerAnalysis analysis,
        PlotNeed need,
        double poundsPerAcre,
        PlantNutrient? setBy,
        RatePolicy policy
    )
    {
        var rate = ApplicationRate.FromPoundsPerAcre(poundsPerAcre);
        return new SingleProductRate(analysis, rate, setBy, NutrientBalances.Of(need.Targets, analysis, rate), policy);
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
