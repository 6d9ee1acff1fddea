using System.Collections.Immutable;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Fertilizers;

/// <summary>Sets what is spread beside what was asked, for every nutrient of either.</summary>
internal static class NutrientBalances
{
    /// <summary>What products bring. A nutrient that nobody asked for is counted where a label states it.</summary>
    internal static ImmutableArray<NutrientBalance> Of(
        ImmutableArray<NutrientTarget> targets,
        params IReadOnlyList<(FertilizerProduct Product, ApplicationRate Rate)> spread
    ) =>
        Of(targets, nutrient =>
            targets.Any(t => t.Nutrient == nutrient) || spread.Any(s => s.Product.Analysis.Percent(nutrient) > 0)
                ? spread.Sum(s => FertilizerRate.Brings(s.Product.Counted, nutrient, s.Rate).PoundsPerAcre)
                : 0
        );

    internal static ImmutableArray<NutrientBalance> Of(
        ImmutableArray<NutrientTarget> targets,
        Func<PlantNutrient, double> deliveredPoundsPerAcre
    )
    {
        var balances = ImmutableArray.CreateBuilder<NutrientBalance>();
        foreach (var nutrient in Enum.GetValues<PlantNutrient>())
        {
            var target = targets.FirstOrDefault(t => t.Nutrient == nutrient);
            double pounds = deliveredPoundsPerAcre(nutrient);
            if (target is not null || pounds > 0)
            {
                balances.Add(
                    new NutrientBalance
                    {
                        Nutrient = nutrient,
                        AtLeast = target?.AtLeast ?? ApplicationRate.Zero,
                        AtMost = target?.AtMost,
                        Delivered = ApplicationRate.FromPoundsPerAcre(pounds),
                    }
                );
            }
        }

        return balances.ToImmutable();
    }
}
