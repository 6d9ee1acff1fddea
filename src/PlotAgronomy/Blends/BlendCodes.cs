namespace PlotAgronomy.Blends;

/// <summary>The codes of this room's findings, as its table holds them.</summary>
internal static class BlendCodes
{
    internal const string BagThin = "blend-bag-thin";
    internal const string BagsChangeShare = "blend-bags-change-share";
    internal const string CoarseScale = "blend-coarse-scale";
    internal const string CompanionOverLimit = "blend-companion-over-limit";
    internal const string Crowded = "blend-crowded";
    internal const string CrowdedAtEveryRate = "blend-crowded-at-every-rate";
    internal const string DateEarly = "blend-date-early";
    internal const string DateEarlyEdge = "blend-date-early-edge";
    internal const string DateLate = "blend-date-late";
    internal const string DrainageApart = "blend-drainage-apart";
    internal const string DrilledRates = "blend-drilled-rates";
    internal const string GrainOnSurface = "blend-grain-on-surface";
    internal const string GroundDry = "blend-ground-dry";
    internal const string GroundWet = "blend-ground-wet";
    internal const string GroupNearCap = "blend-group-near-cap";
    internal const string GroupOverCap = "blend-group-over-cap";
    internal const string HostThin = "blend-host-thin";
    internal const string Inoculants = "blend-inoculants";
    internal const string KindIsFullStand = "blend-kind-is-full-stand";
    internal const string Livestock = "blend-livestock";
    internal const string LotUnknown = "blend-lot-unknown";
    internal const string ManyKinds = "blend-many-kinds";
    internal const string ManySeedlings = "blend-many-seedlings";
    internal const string MethodsDiffer = "blend-methods-differ";
    internal const string NitrogenAgainstLegumes = "blend-nitrogen-against-legumes";
    internal const string NitrogenConflict = "blend-nitrogen-conflict";
    internal const string NitrogenEstimated = "blend-nitrogen-estimated";
    internal const string NitrogenHungry = "blend-nitrogen-hungry";
    internal const string NoCommonDay = "blend-no-common-day";
    internal const string NoDates = "blend-no-dates";
    internal const string NoRecipe = "blend-no-recipe";
    internal const string NotOnOffer = "blend-not-on-offer";
    internal const string Noxious = "blend-noxious";
    internal const string OneFamily = "blend-one-family";
    internal const string OutOfSeason = "blend-out-of-season";
    internal const string OverBudget = "blend-over-budget";
    internal const string OwnFullRate = "blend-own-full-rate";
    internal const string PackagesOverBudget = "blend-packages-over-budget";
    internal const string PassDepthsApart = "blend-pass-depths-apart";
    internal const string Passes = "blend-passes";
    internal const string PhApart = "blend-ph-apart";
    internal const string PhHigh = "blend-ph-high";
    internal const string PhLow = "blend-ph-low";
    internal const string Poison = "blend-poison";
    internal const string Residue = "blend-residue";
    internal const string SeasonBare = "blend-season-bare";
    internal const string SeasonThin = "blend-season-thin";
    internal const string SmallBatch = "blend-small-batch";
    internal const string TooDense = "blend-too-dense";
    internal const string TotalUncertain = "blend-total-uncertain";
    internal const string TreatedOnSurface = "blend-treated-on-surface";
    internal const string WarmAndCool = "blend-warm-and-cool";
}
