using System.Collections.Immutable;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Sheets;

/// <summary>Kinds that every system takes as the same crop rows, so that one question answers for all of them.</summary>
internal sealed class AskedGroup
{
    private readonly CropRow? stated;
    private readonly KindProxy? proxy;
    private readonly ImmutableArray<PlannedKind> kinds;
    private readonly bool carriedOff;

    private AskedGroup(
        string id,
        string name,
        CropRow? stated,
        KindProxy? proxy,
        ImmutableArray<PlannedKind> kinds,
        bool carriedOff
    )
    {
        Id = id;
        Name = name;
        this.stated = stated;
        this.proxy = proxy;
        this.kinds = kinds;
        this.carriedOff = carriedOff;
    }

    /// <summary>Its first kind or, where a row was asked for, that.</summary>
    internal string Id { get; }

    /// <summary>The kinds or, where a row was asked for, its words.</summary>
    internal string Name { get; }

    /// <summary>The row that was asked for.</summary>
    internal static AskedGroup Of(CropRow row, PlotPlan plan) =>
        new(FigureCode.Word(CropRows.WordsFor(row)), CropRows.WordsFor(row), row, null, plan.Kinds, plan.Plot.IsCarriedOff);

    /// <summary>The plan's kinds that have share enough to count, those taken alike together.</summary>
    internal static ImmutableArray<AskedGroup> Of(PlotPlan plan)
    {
        var counted = plan.Kinds.Where(k => k.Share.ShareOfFullStand >= BlendNeedRule.CountedFromShare).ToList();
        return
        [
            .. (counted.Count == 0 ? plan.Kinds : counted.AsEnumerable())
                .GroupBy(k => string.Join('|', KindProxy.For(k.Kind).Rows))
                .Select(g => new AskedGroup(
                    g.First().Kind.Id,
                    string.Join("; ", g.Select(k => SheetText.Name(k.Kind))),
                    null,
                    KindProxy.For(g.First().Kind),
                    [.. g],
                    plan.Plot.IsCarriedOff
                )),
        ];
    }

    /// <summary>What a system is asked for; null when it has no fitting row, or no yield in the row's unit for a crop that leaves
    /// the plot.</summary>
    internal CropUse? CropFor(RecommendationSystem system, PlantNutrient nutrient) =>
        (stated ?? proxy!.RowIn(system, nutrient)) is not { } row ? null
        : !carriedOff ? CropUse.Browsed(row, YieldFor(row))
        : YieldFor(row) is { } yield ? CropUse.CarriedOff(row, yield)
        : null;

    /// <summary>Why a system cannot be asked.</summary>
    internal string WhyNot(RecommendationSystem system)
    {
        var nearest = stated ?? proxy!.RowIn(system, PlantNutrient.Phosphate) ?? proxy!.RowIn(system, PlantNutrient.Potash);
        if (nearest is not { } row)
        {
            return "it has no row that comes near.";
        }

        string unit = NutrientWords.InFull(CropRows.UnitOf(row));
        return $"asked for {CropRows.WordsFor(row)} it needs the yield in {unit}, which the plan does not give.";
    }

    private CropYield? YieldFor(CropRow row)
    {
        var fitting = kinds.Select(k => k.Yield).OfType<CropYield>().Where(y => y.Unit == CropRows.UnitOf(row)).ToList();
        return fitting.Count == 0 ? null : fitting.MaxBy(y => y.PerAcre);
    }
}
