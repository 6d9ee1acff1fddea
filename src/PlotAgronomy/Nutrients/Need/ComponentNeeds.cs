using System.Collections.Immutable;

namespace PlotAgronomy.Nutrients;

/// <summary>Asks the system for every kind of the blend.</summary>
internal sealed class ComponentNeeds(PlotNeedRequest request)
{
    internal ImmutableArray<ComponentNeed> Run()
    {
        bool all = NoneCounts(request);
        double counted = CountedFrom(request);
        return [.. request.Kinds.Select(k => Of(k, all || k.ShareOfFullStand >= counted))];
    }

    /// <summary>Whether so much of the stand are legumes that a rule for mixtures holds.</summary>
    private bool IsWithLegumes
    {
        get
        {
            double all = request.Kinds.Sum(k => k.ShareOfFullStand);
            double legumes = request.LegumesAreInoculated
                ? request.Kinds.Where(k => k.Kind.IsLegume).Sum(k => k.ShareOfFullStand)
                : 0;
            return legumes > 0 && Tolerance.IsAbove(legumes / all, NutrientConstants.All["nitrogen-mixture-legumes"]);
        }
    }

    internal static double CountedFrom(PlotNeedRequest request) => request.CountedFromShare ?? BlendNeedRule.CountedFromShare;

    /// <summary>Where no kind has a share large enough, all count.</summary>
    internal static bool NoneCounts(PlotNeedRequest request)
    {
        double counted = CountedFrom(request);
        return !request.Kinds.IsEmpty && request.Kinds.All(k => k.ShareOfFullStand < counted);
    }

    internal static KindUse UseOf(PlotNeedRequest request, CropKind kind) =>
        request.Uses.GetValueOrDefault(kind.Id) ?? new KindUse();

    private ComponentNeed Of(KindShare component, bool counts)
    {
        var proxy = KindProxy.For(component.Kind);
        var use = UseOf(request, component.Kind);
        bool isBrowsed = IsBrowsed(use);
        var phosphateRow = RowOf(PlantNutrient.Phosphate);
        var potashRow = RowOf(PlantNutrient.Potash);
        var phosphate = Answer(phosphateRow, use);
        return new ComponentNeed
        {
            Component = component,
            Counts = counts,
            PhosphateRow = phosphateRow,
            PotashRow = potashRow,
            PhosphateAnswer = phosphate,
            PotashAnswer = potashRow == phosphateRow ? phosphate : Answer(potashRow, use),
            Nitrogen = Nitrogen(component.Kind, use, proxy),
        };

        CropRow? RowOf(PlantNutrient nutrient) =>
            request.System is { } system ? use.TakenAs ?? proxy.RowIn(system, nutrient, isBrowsed) : null;
    }

    /// <summary>A row counted in another unit than the yield has no answer for a crop that leaves the plot; where it stays, the
    /// yield is left aside.</summary>
    internal NutrientRecommendation? Answer(CropRow? row, KindUse use) =>
        row is { } known && (IsBrowsed(use) || use.Yield is not { } yield || yield.Unit == CropRows.UnitOf(known))
            ? request.System!.Recommend(request.Soil, CropUseOf(known, use) with { BuildUpYears = request.BuildUpYears })
            : null;

    internal static bool IsBrowsed(KindUse use) =>
        use.Removal is { } stated ? ReferenceEquals(stated, CropRemoval.Browsed) : !use.IsCarriedOff;

    private static CropUse CropUseOf(CropRow row, KindUse use)
    {
        if (IsBrowsed(use))
        {
            return CropUse.Browsed(row, use.Yield is { } hoped && hoped.Unit == CropRows.UnitOf(row) ? hoped : null);
        }

        if (use.Yield is not { } yield)
        {
            throw new ArgumentException("A crop that is carried off needs a yield; it is asked for, never assumed.", nameof(use));
        }

        if (use.Removal is not { } removal)
        {
            return CropUse.CarriedOff(row, yield);
        }

        return removal.Find(PlantNutrient.Phosphate) is { } phosphate && removal.Find(PlantNutrient.Potash) is { } potash
            ? CropUse.CarriedOff(row, yield, phosphate.High, potash.High)
            : throw new ArgumentException("The stated removal must give both P2O5 and K2O.", nameof(use));
    }

    private NitrogenAnswer Nitrogen(CropKind kind, KindUse use, KindProxy proxy)
    {
        var rule = use.Nitrogen ?? (IsWithLegumes ? proxy.Nitrogen.WithLegumes : null) ?? proxy.Nitrogen;
        if (kind.IsLegume && use.Nitrogen is null && !request.LegumesAreInoculated)
        {
            rule = NitrogenRule.UninoculatedLegume;
        }

        bool fits = use.Yield is { } yield && rule.YieldUnit == yield.Unit;
        return rule.Answer(fits ? use.Yield : null);
    }
}
