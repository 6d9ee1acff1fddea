using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>The cheapest set on offer; at like cost the one closer to the need, and what else really differs.</summary>
internal sealed class PurchaseSets
{
    private readonly PlotPlan plan;
    private readonly PlotNeed need;
    private readonly Purchase? cheapest;
    private readonly Purchase? closest;

    internal PurchaseSets(PlotPlan plan, PlotNeed need, bool isNeeded)
    {
        this.plan = plan;
        this.need = need;
        cheapest =
            isNeeded && !plan.FertilizerOffers.IsEmpty ? Shelf.Cheapest(need, plan.Plot.Area, field: Field(plan, need)) : null;
        closest =
            cheapest is { MeetsEveryNeed: true }
            && cheapest.Balances.Any(OverNeed.IsOver)
            && Shelf.Cheapest(OverNeed.Limited(need), plan.Plot.Area, field: Field(plan, need)) is { MeetsEveryNeed: true } found
                ? found
                : null;
    }

    /// <summary>The set to buy; null where nothing is needed or nothing is on offer.</summary>
    internal Purchase? Taken => IsCloserTaken ? closest : cheapest;

    private bool IsCloserTaken =>
        closest is not null
        && closest.TotalCost <= cheapest!.TotalCost * (1 + ((decimal)FertilizerConstants.All["like-cost"] / 100));

    private FertilizerShelf Shelf => FertilizerShelf.FromOffers(plan.FertilizerOffers);

    internal IEnumerable<Finding> Findings() =>
        IsCloserTaken
            ?
            [
                FindingCatalog.Create(
                    FertilizerCodes.CloserSet,
                    ("cheapest", plan.Currency.Print(cheapest!.TotalCost)),
                    ("cost", plan.Currency.Print(closest!.TotalCost)),
                    ("over", string.Join(", ", cheapest.Balances.Where(OverNeed.IsOver).Select(b => b.ToString())))
                ),
            ]
            : [];

    /// <summary>Runner-ups that meet every need and differ from the set taken.</summary>
    internal ImmutableArray<OtherPurchase> Others()
    {
        if (cheapest is not { MeetsEveryNeed: true })
        {
            return [];
        }

        var field = Field(plan, need);
        var others = ImmutableArray.CreateBuilder<OtherPurchase>();
        Add(RunnerUp.Cheapest, IsCloserTaken ? cheapest : null);
        Add(RunnerUp.ClosestToNeed, closest);
        Add(RunnerUp.NextCheapest, Shelf.NextCheapest(need, plan.Plot.Area, field: field));
        Add(RunnerUp.FewestProducts, Shelf.FewestProducts(need, plan.Plot.Area, field: field));
        return others.ToImmutable();

        void Add(RunnerUp kind, Purchase? other)
        {
            if (
                other is { MeetsEveryNeed: true }
                && !BuysTheSame(other, Taken!)
                && !others.Any(known => BuysTheSame(known.Purchase, other))
            )
            {
                others.Add(new OtherPurchase { Is = kind, Purchase = other });
            }
        }
    }

    /// <summary>Whether a product brings nitrogen and neither phosphate nor potash.</summary>
    internal static bool IsNitrogenAlone(FertilizerProduct product) =>
        product.Analysis.Percent(PlantNutrient.Nitrogen) > 0
        && product.Analysis.Percent(PlantNutrient.Phosphate) <= 0
        && product.Analysis.Percent(PlantNutrient.Potash) <= 0;

    private static bool BuysTheSame(Purchase one, Purchase other) =>
        one.Lines.Select(Bought).SequenceEqual(other.Lines.Select(Bought));

    /// <summary>A thousandth of a package more or less is the same purchase.</summary>
    private static (double Packages, string Product) Bought(PurchaseLine line) =>
        (Math.Round(line.Packages, 3, MidpointRounding.AwayFromZero), line.Product.Name);

    internal static FieldConditions Field(PlotPlan plan, PlotNeed need, bool onTheStand = false) =>
        new()
        {
            IsIncorporated =
                onTheStand ? false
                : plan.Method is null && !GrownKinds.IsUpkeep(plan) ? null
                : GrownKinds.IsTilled(plan),
            IsNearWater = plan.Plot.IsNearWater,
            Soil = plan.Soil,
            NotKnown = [.. need.NotKnown.Select(n => n.Nutrient)],
            SeasonNitrogen = GrownKinds.IsUpkeep(plan)
                ? null
                : ApplicationRate.FromPoundsPerAcre(need.NitrogenDoses.Sum(d => d.High.PoundsPerAcre)),
            HasSoilTest = plan.IsTested,
            IsLegumeStand =
                plan.Plot.Cover == GroundCover.LegumeStand
                || (GrownKinds.Of(plan) is { IsEmpty: false } grown && grown.All(k => k.Kind.IsLegume)),
        };
}
