using System.Collections.Immutable;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Planning;

/// <summary>Kinds that every system takes as the same crop rows, so that one question answers for all of them.</summary>
internal sealed class AskedKinds
{
    private readonly CropRow? stated;
    private readonly KindProxy? proxy;
    private readonly ImmutableArray<CropYield> yields;
    private readonly bool carriedOff;

    private AskedKinds(CropRow? stated, KindProxy? proxy, IEnumerable<KindShare> grown, PlotPlan plan)
    {
        this.stated = stated;
        this.proxy = proxy;
        Kinds = [.. grown.Select(k => k.Kind)];
        yields = [.. plan.Kinds.Where(k => Kinds.Any(g => g.Id == k.Kind.Id)).Select(k => k.Yield).OfType<CropYield>()];
        carriedOff = plan.Plot.IsCarriedOff;
    }

    internal ImmutableArray<CropKind> Kinds { get; }

    /// <summary>All kinds for the row that was asked for.</summary>
    internal static AskedKinds Of(CropRow row, PlotPlan plan) => new(row, null, GrownKinds.Of(plan), plan);

    /// <summary>The kinds sown, or standing where none is, that have share enough to count, those taken alike together.</summary>
    internal static ImmutableArray<AskedKinds> Of(PlotPlan plan)
    {
        var grown = GrownKinds.Of(plan);
        var counted = grown.Where(k => k.ShareOfFullStand >= BlendNeedRule.CountedFromShare).ToList();
        return
        [
            .. (counted.Count == 0 ? grown : counted.AsEnumerable())
                .GroupBy(k => string.Join('|', KindProxy.For(k.Kind).RowsOf(!plan.Plot.IsCarriedOff)))
                .Select(g => new AskedKinds(null, KindProxy.For(g.First().Kind), g, plan)),
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
        var fitting = yields.Where(y => y.Unit == CropRows.UnitOf(row)).ToList();
        return fitting.Count == 0 ? null : fitting.MaxBy(y => y.PerAcre);
    }
}
