using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Blends;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>What is to be grown.</summary>
internal sealed class GrowingShape : PlanShape<ImmutableArray<PlannedKind>, PlotPlan>
{
    private const double LeastTotal = 0.1;
    private const double MostTotal = 3;

    private readonly BlendKindShape kind;
    private readonly PlanField<ImmutableArray<PlannedKind>> kinds;

    internal GrowingShape(RestOfPlan rest)
        : base("growing", "What is to be grown.")
    {
        kind = new BlendKindShape(rest);
        kinds = Required("kinds", List(kind, fewest: 1), "The kinds of the blend.", p => ToWrite(p));
        var totalShare = Optional(
            "totalShare",
            Number(LeastTotal, MostTotal),
            "Wanted total of full-stand shares; 1.0 unless stated.",
            p => AsRates(p) || AreEqual(Total(p), 1) ? null : Math.Round(Total(p), 6, MidpointRounding.AwayFromZero)
        );

        ReadAs(at =>
        {
            double wanted = at.Maybe(totalShare) ?? 1;
            if (SumOfShares(at) is { } sum && !AreEqual(sum, wanted))
            {
                at.Report(
                    kinds,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"the shares of a full stand sum to {sum:0.###}; expected {wanted:0.###} "
                            + $"(state another total as totalShare)"
                    )
                );
            }

            foreach (var twice in at.All(kinds).GroupBy(k => k.Kind.Id).Where(g => g.Count() > 1))
            {
                at.Report(kinds, $"{twice.First().Kind.CommonName} stands twice");
            }

            return at.All(kinds);
        });
    }

    /// <summary>Null where a kind's share is not stated, and where no kind is.</summary>
    private double? SumOfShares(PlanPart growing)
    {
        double? sum = null;
        foreach (var part in growing.Parts(kinds))
        {
            if (part.Maybe(kind.Share) is not { } share)
            {
                return null;
            }

            sum = (sum ?? 0) + share;
        }

        return sum;
    }

    /// <summary>A system that takes a kind as a row counted in tons cannot take its yield in bushels.</summary>
    internal void CheckYields(PlanPart growing, RecommendationSystem system)
    {
        foreach (var part in growing.Parts(kinds))
        {
            kind.CheckYield(part, system);
        }
    }

    private static ImmutableArray<BlendKindShape.KindOfPlan> ToWrite(PlotPlan plan) =>
        [.. plan.Kinds.Select(k => new BlendKindShape.KindOfPlan(k, plan, AsRates(plan)))];

    /// <summary>Shares that a file does not allow are written as rates.</summary>
    private static bool AsRates(PlotPlan plan) =>
        Total(plan) is < LeastTotal or > MostTotal || plan.Kinds.Any(k => k.Share.ShareOfFullStand > BlendKindShape.MostShare);

    private static double Total(PlotPlan plan) => plan.Kinds.Sum(k => k.Share.ShareOfFullStand);

    private static bool AreEqual(double total, double wanted) => Math.Abs(total - wanted) <= BlendConstants.All["share-rounding"];
}
