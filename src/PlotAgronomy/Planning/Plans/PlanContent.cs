using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>All that a plan file says, in the types of the rooms.</summary>
internal sealed class PlanContent
{
    internal required DateOnly PlantingDate { get; init; }

    internal required PlantingMethod Method { get; init; }

    internal required Currency Currency { get; init; }

    internal required SoilReport Report { get; init; }

    internal required PlotSite Site { get; init; }

    internal DateOnly? LimeDate { get; init; }

    internal Length? TillageDepth { get; init; }

    internal PrintedAdvice? Printed { get; init; }

    internal EarlierLime? EarlierLime { get; init; }

    internal required LimeMethod LimeMethod { get; init; }

    internal required RecommendationSystem NutrientSystem { get; init; }

    internal PlotSetting Setting { get; init; } = PlotSetting.Unknown;

    internal LegumeCredit? LegumeCredit { get; init; }

    internal double? StatedTargetPh { get; init; }

    internal required ImmutableArray<PlannedKind> Kinds { get; init; }

    internal ImmutableArray<LimeOffer> LimeOffers { get; init; } = [];

    internal ImmutableArray<FertilizerProduct> FertilizerOffers { get; init; } = [];

    internal required ImmutableArray<SeedOffer> SeedOffers { get; init; }

    internal ImmutableArray<StoreBag> StoreBlends { get; init; } = [];

    internal required PlannedSpreader Spreader { get; init; }

    internal SowingMethod SowingMethod => SowingMethodOf(Method);

    internal static SowingMethod SowingMethodOf(PlantingMethod method) =>
        method switch
        {
            PlantingMethod.Drilled => SowingMethod.Drilled,
            PlantingMethod.FrostSeeded => SowingMethod.FrostSeeded,
            PlantingMethod.TilledAndPacked => SowingMethod.Broadcast,
            _ => SowingMethod.BroadcastUnderCover,
        };
}
