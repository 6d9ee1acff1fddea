using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>What may be cut on a plot, and what is lost by it.</summary>
internal static class CutChoices
{
    internal static IEnumerable<BudgetCut> Of(PlotAnswers plot, CutSort sort) =>
        sort switch
        {
            CutSort.Dressing => Dressing(plot),
            CutSort.Lime => LimeTopUp(plot),
            CutSort.DearKind => DearKinds(plot),
            CutSort.Fertilizer => Fertilizer(plot),
            _ => [WholePlot(plot)],
        };

    private static IEnumerable<BudgetCut> Dressing(PlotAnswers plot)
    {
        if (plot.Fertilizer.Told.LaterNitrogen.OrNull() is { } later && !plot.Fertilizer.Told.Later.IsEmpty)
        {
            yield return new()
            {
                Plot = plot,
                Sort = CutSort.Dressing,
                What = $"{Names(plot.Fertilizer.Told.Later.Select(l => l.Product.Name))} for the stand",
                Loses =
                    $"{Amounts.Print(later.Low, "lb/ac", 0)} to {Amounts.Print(later.High, "lb/ac", 0)} of nitrogen are not "
                    + "given: grain and grass stay thin; it can still be bought in time for the dressing",
            };
        }
    }

    /// <summary>Never where the pH of today is barely what a kind bears: a reading is off by as much.</summary>
    private static IEnumerable<BudgetCut> LimeTopUp(PlotAnswers plot)
    {
        var plan = plot.Plan;
        var lime = plot.Lime.Told;
        ImmutableArray<double?> lowest = [.. GrownKinds.Of(plan).Select(k => k.Kind.LowestPhOn(plan.Soil))];
        double margin = PlanningConstants.All["ph-margin"];
        if (
            lime.Offer is { } offer
            && lime.TargetPh is { } target
            && plan.Soil.WaterPh is { Value: var ph }
            && !lowest.IsEmpty
            && lowest.All(l => l is { } low && !Tolerance.IsBelow(ph, low + margin))
        )
        {
            yield return new()
            {
                Plot = plot,
                Sort = CutSort.Lime,
                What = offer.Item.Name,
                Loses =
                    $"the pH stays near {Amounts.Print(ph, 1)} in place of {Amounts.Print(target, 1)}; the kinds stand down to "
                    + $"{Amounts.Print(lowest.Max()!.Value, 1)}, and the lime is owed next year",
            };
        }
    }

    private static IEnumerable<BudgetCut> DearKinds(PlotAnswers plot)
    {
        if (plot.Seed.OrNull() is not { Kinds.Length: > 1 } seed)
        {
            return [];
        }

        return seed
            .Kinds.Select(k => (k.Planned.Kind, Without: PlotFeeding.SeasonsWithout(seed, k.Planned.Kind)))
            .Where(k => k.Without.All(s => s.IsCoveredAfter || !s.IsCoveredBefore))
            .Select(k => new BudgetCut
            {
                Plot = plot,
                Sort = CutSort.DearKind,
                Kind = k.Kind,
                What = k.Kind.ShortName,
                Loses = $"no season is left bare; {Falls(k.Without)}",
            });
    }

    private static string Falls(ImmutableArray<SeasonLoss> seasons) =>
        string.Join(", ", seasons.Where(s => !Tolerance.AreEqual(s.Before, s.After)).Select(Fall)) is { Length: > 0 } falls
            ? $"of a full stand feed {falls}"
            : "it feeds in no season by its ratings";

    private static string Fall(SeasonLoss loss) =>
        $"{Amounts.Print(loss.After, 2)} in place of {Amounts.Print(loss.Before, 2)} in {SeasonalUse.SeasonWords[loss.Season]}";

    private static IEnumerable<BudgetCut> Fertilizer(PlotAnswers plot)
    {
        if (plot.Fertilizer.Told.Purchase.OrNull() is { Lines.IsEmpty: false } bought)
        {
            var asked = bought
                .Balances.Where(b => b.AtLeast > ApplicationRate.Zero)
                .Select(b => $"{PlantNutrients.Symbols[b.Nutrient]} {Amounts.Print(b.AtLeast, "lb/ac", 0)}");
            yield return new()
            {
                Plot = plot,
                Sort = CutSort.Fertilizer,
                What = Names(bought.Lines.Select(l => l.Product.Name)),
                Loses = $"{string.Join(", ", asked)} are not given: the stand lives on what the soil has",
            };
        }
    }

    private static BudgetCut WholePlot(PlotAnswers plot)
    {
        var fed = plot.Seed.OrNull()?.Seasons.Seasons.Where(s => s.IsCovered).Select(s => SeasonalUse.SeasonWords[s.Season]);
        string seasons = string.Join(", ", fed ?? []);
        string area = Amounts.Print(plot.Plan.Plot.Area, "ac", 2);
        return new()
        {
            Plot = plot,
            Sort = CutSort.WholePlot,
            What = "the whole plot",
            Loses = seasons.Length > 0 ? $"{area} feed nothing in {seasons}" : $"{area} are not kept up",
        };
    }

    private static string Names(IEnumerable<string> names) => string.Join(", ", names.Distinct());
}
