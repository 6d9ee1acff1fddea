using System.Collections.Immutable;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Fertilizers;

/// <summary>Sets what is spread beside what was asked, for every nutrient of either.</summary>
internal static class NutrientBalances
{
    private static readonly PlantNutrient[] Every = Enum.GetValues<PlantNutrient>();

    /// <summary>What products bring. A nutrient that nobody asked for is counted where a label states it.</summary>
    internal static ImmutableArray<NutrientBalance> Of(
        ImmutableArray<NutrientTarget> targets,
        params ReadOnlySpan<(FertilizerProduct Product, ApplicationRate Rate)> spread
    )
    {
        var balances = ImmutableArray.CreateBuilder<NutrientBalance>(targets.Length);
        foreach (var nutrient in Every)
        {
            var target = Find(targets, nutrient);
            Add(balances, nutrient, target, target is not null || IsStated(spread, nutrient) ? Sum(spread, nutrient) : 0);
        }

        return balances.DrainToImmutable();
    }

    /// <summary>What one product of an analysis brings.</summary>
    internal static ImmutableArray<NutrientBalance> Of(
        ImmutableArray<NutrientTarget> targets,
        FertilizerAnalysis analysis,
        ApplicationRate rate
    )
    {
        var balances = ImmutableArray.CreateBuilder<NutrientBalance>(targets.Length);
        foreach (var nutrient in Every)
        {
            Add(balances, nutrient, Find(targets, nutrient), analysis.Brings(nutrient, rate).PoundsPerAcre);
        }

        return balances.DrainToImmutable();
    }

    private static void Add(
        ImmutableArray<NutrientBalance>.Builder balances,
        PlantNutrient nutrient,
        NutrientTarget? target,
        double pounds
    )
    {
        if (target is not null || pounds > 0)
        {
            balances.Add(
                new NutrientBalance
                {
                    Nutrient = nutrient,
                    AtLeast = target?.AtLeast ?? ApplicationRate.Zero,
                    AtMost = target?.AtMost,
                    Delivered = ApplicationRate.FromPoundsPerAcre(pounds),
                    IsAsked = target is not null,
                }
            );
        }
    }

    private static NutrientTarget? Find(ImmutableArray<NutrientTarget> targets, PlantNutrient nutrient)
    {
        foreach (var target in targets)
        {
            if (target.Nutrient == nutrient)
            {
                return target;
            }
        }

        return null;
    }

    private static bool IsStated(ReadOnlySpan<(FertilizerProduct Product, ApplicationRate Rate)> spread, PlantNutrient nutrient)
    {
        foreach (var (product, _) in spread)
        {
            if (product.Analysis.Percent(nutrient) > 0)
            {
                return true;
            }
        }

        return false;
    }

    private static double Sum(ReadOnlySpan<(FertilizerProduct Product, ApplicationRate Rate)> spread, PlantNutrient nutrient)
    {
        double pounds = 0;
        foreach (var (product, rate) in spread)
        {
            pounds += product.Counted.Brings(nutrient, rate).PoundsPerAcre;
        }

        return pounds;
    }
}
