using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Liming;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>A plan file that was read without a mistake: one plot, one planting.</summary>
public sealed class PlotPlan
{
    internal PlotPlan(PlanContent content) => Content = content;

    /// <summary>Gets the name of the plot.</summary>
    public string PlotName => Content.Site.Name;

    /// <summary>Gets the area of the plot.</summary>
    public Area Area => Content.Site.Area;

    /// <summary>Gets the day of planting.</summary>
    public DateOnly PlantingDate => Content.PlantingDate;

    /// <summary>Gets how the seed is planted.</summary>
    public PlantingMethod Method => Content.Method;

    /// <summary>Gets the one currency of all prices.</summary>
    public Currency Currency => Content.Currency;

    /// <summary>Gets the laboratory's report as printed.</summary>
    public SoilReport Report => Content.Report;

    /// <summary>Gets the liming materials on offer.</summary>
    public ImmutableArray<LimeOffer> LimeOffers => Content.LimeOffers;

    /// <summary>Gets the store's ready blends on offer.</summary>
    public ImmutableArray<StoreBag> StoreBlends => Content.StoreBlends;

    /// <summary>Gets the kinds that are offered in more than one lot of seed, in the order of the file.</summary>
    public ImmutableArray<CropKind> KindsInSeveralLots =>
        [.. Content.SeedOffers.GroupBy(o => o.Lot.Kind.Id).Where(g => g.Count() > 1).Select(g => g.First().Lot.Kind)];

    internal PlanContent Content { get; }
}
