using System.Collections.Immutable;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Planning;

/// <summary>Kinds that every system takes as the same crop rows, so that one question answers for all of them.</summary>
internal sealed class AskedKinds
{
    private readonly CropRow? stated;
    private readonly KindProxy? proxy;
    private readonly ImmutableArray<PlannedKind> planned;
    private readonly bool carriedOff;

    private AskedKinds(CropRow? stated, KindProxy? proxy, ImmutableArray<PlannedKind> planned, bool carriedOff)
    {
        this.stated = stated;
        this.proxy = proxy;
        this.planned = planned;
        this.carriedOff = carriedOff;
    }

    internal ImmutableArray<CropKind> Kinds => [.. planned.Select(k => k.Kind)];

    /// <summary>All kinds for the row that was asked for.</summary>
    internal static AskedKinds Of(CropRow row, PlotPlan plan) => new(row, null, plan.Kinds, plan.Plot.IsCarriedOff);

    /// <summary>The plan's kinds that have share enough to count, those taken alike together.</summary>
    internal static ImmutableArray<AskedKinds> Of(PlotPlan plan)
    {
        var counted = plan.Kinds.Where(k => k.Share.ShareOfFullStand >= BlendNeedRule.CountedFromShare).ToList();
        return
        [
            .. (counted.Count == 0 ? plan.Kinds : counted.AsEnumerable())
                .GroupBy(k => string.Join('|', KindProxy.For(k.Kind).RowsOf(!plan.Plot.IsCarriedOff)))
                .Select(g => new AskedKinds(null, KindProxy.For(g.First().Kind), [.. g], plan.Plot.IsCarriedOff)),
        ];
    }

    /// <summary>What a system is asked for; null when it has no fitting row, or no yield in the row's unit for a crop that leaves
    /// the plot.</summary>
    internal CropUse? CropFor(RecommendationSystem system, PlantNutrient nutrient) =>
        (stated ?? proxy!.RowIn(system, nutrient, !carriedOff)) is not { } row ? null
        : !carriedOff ? CropUse.Browsed(row, YieldFor(row))
        : YieldFor(row) is { } yield ? CropUse.CarriedOff(row, yield)
        : null;

    /// <summary>Why a system without an answer is silent.</summary>
    internal SystemSilence SilenceOf(SystemReply reply) =>
        new()
        {
            System = reply.System,
            Unanswered = [.. reply.Asked.SelectMany(a => a.Answer.Unanswered.Where(u => u.Nutrient == a.Nutrient))],
            NearestRow = stated
                ?? proxy!.RowIn(reply.System, PlantNutrient.Phosphate, !carriedOff)
                ?? proxy!.RowIn(reply.System, PlantNutrient.Potash, !carriedOff),
        };

    private CropYield? YieldFor(CropRow row)
    {
        var fitting = planned.Select(k => k.Yield).OfType<CropYield>().Where(y => y.Unit == CropRows.UnitOf(row)).ToList();
        return fitting.Count == 0 ? null : fitting.MaxBy(y => y.PerAcre);
    }
}
