using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Planning;

/// <summary>The nitrogen of a season in two: what goes on for the sowing, and what its rule gives to the stand.</summary>
/// <param name="need">Need without what is too little to buy.</param>
/// <param name="kinds">Kinds that grow, with their shares.</param>
/// <param name="isStanding">Whether nothing is sown, so that all of it goes on the stand.</param>
internal sealed class SeasonNitrogen(PlotNeed need, ImmutableArray<KindShare> kinds, bool isStanding)
{
    private readonly NutrientTarget? target = need.Find(PlantNutrient.Nitrogen);

    /// <summary>Whether any of it is given to the stand.</summary>
    internal bool IsSplit => !isStanding && target?.AtLeast > ApplicationRate.Zero && need.NitrogenDoses.Any(IsLater);

    /// <summary>What may go on for the sowing, the wanted first: no nitrogen on a young stand that is half legumes; then what
    /// comes along with phosphate, up to a starter's worth or to what is too little to buy.</summary>
    internal IEnumerable<PlotNeed> ForSowing =>
        !IsSplit ? [need]
        : IsLedByLegumes && AtSowing.High <= 0 ? [Sowing(0), Sowing(PurchaseFloor.PoundsOf(PlantNutrient.Nitrogen))]
        : [Sowing(Starter)];

    /// <summary>The doses left for the stand, when so much went on for the sowing: what came along is taken off the
    /// first.</summary>
    internal ImmutableArray<NitrogenDose> Later(ApplicationRate brought)
    {
        if (!IsSplit)
        {
            return [];
        }

        double low = Along(brought).PoundsPerAcre,
            high = Math.Max(0, brought.PoundsPerAcre - AtSowing.High);
        var doses = ImmutableArray.CreateBuilder<NitrogenDose>();
        foreach (var dose in need.NitrogenDoses.Where(IsLater))
        {
            var left = dose.Less(Math.Min(low, dose.Low.PoundsPerAcre), Math.Min(high, dose.High.PoundsPerAcre));
            low -= dose.Low.PoundsPerAcre - left.Low.PoundsPerAcre;
            high -= dose.High.PoundsPerAcre - left.High.PoundsPerAcre;
            if (left.High > ApplicationRate.Zero)
            {
                doses.Add(left);
            }
        }

        return doses.Any(d => d.Low > ApplicationRate.Zero) ? doses.ToImmutable() : [];
    }

    /// <summary>What comes along beyond the dose at sowing.</summary>
    internal ApplicationRate Along(ApplicationRate brought) =>
        ApplicationRate.FromPoundsPerAcre(Math.Max(0, brought.PoundsPerAcre - AtSowing.Low));

    private static bool IsLater(NitrogenDose dose) => dose.Time != DressingTime.AtSowing;

    private (double Low, double High) AtSowing
    {
        get
        {
            var doses = need.NitrogenDoses.Where(d => !IsLater(d)).ToList();
            return (doses.Sum(d => d.Low.PoundsPerAcre), doses.Sum(d => d.High.PoundsPerAcre));
        }
    }

    private bool IsLedByLegumes =>
        kinds.Where(k => k.Kind.IsLegume).Sum(k => k.ShareOfFullStand) >= kinds.Sum(k => k.ShareOfFullStand) / 2;

    /// <summary>A starter's worth and the tolerance of a bag, never more than the whole season's.</summary>
    private double Starter =>
        Math.Min(
            (target!.AtMost ?? target.AtLeast).PoundsPerAcre,
            BlendNeedRule.LegumeNitrogenCeilingPounds * (1 + (FertilizerConstants.All["tolerance-nitrogen-over"] / 100))
        );

    private PlotNeed Sowing(double mostPounds)
    {
        var (low, high) = AtSowing;
        return need.With(
            need.Targets.Select(t =>
                t != target
                    ? t
                    : NutrientTarget.Create(
                        t.Nutrient,
                        ApplicationRate.FromPoundsPerAcre(low),
                        ApplicationRate.FromPoundsPerAcre(Math.Max(high, mostPounds)),
                        () => t.Reason
                    )
            )
        );
    }
}
