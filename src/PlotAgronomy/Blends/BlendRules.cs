using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>The single numbers of this room, each with its source.</summary>
internal static class BlendRules
{
    private static readonly ConstantTable Constants = new("Blends/Data/constants.csv");

    /// <summary>Share of a full stand that covers a season.</summary>
    internal static double ShareThatCovers => Constants["season-share"];

    internal static double UncertainTotal => Constants["uncertain-total"];

    internal static double PastureKinds => Constants["pasture-kinds"];

    internal static double LegumeShare => Constants["legume-share"];

    internal static double HungryShare => Constants["hungry-share"];

    internal static double ThinBag => Constants["thin-bag"];

    internal static double SmallBatchSpread => Constants["small-batch-spread"];

    internal static ImmutableArray<string> SmallBatchSources => Constants.Find("small-batch-spread").Origin.SourceIds;

    /// <summary>Where the share that covers a season comes from.</summary>
    internal static Origin SeasonOrigin => Constants.Find("season-share").Origin;

    internal static ImmutableArray<string> RecipeSources => Constants.Find("recipe-step").Origin.SourceIds;

    internal static double WeighingError => Constants["weighing-error"];

    /// <summary>How far the shares' total may miss the total stated.</summary>
    internal static double ShareRounding => Constants["share-rounding"];

    internal static double ShareChange => Constants["share-change"];

    /// <summary>The stand at which the lower printed figure of nitrogen fixed holds.</summary>
    internal static double NitrogenQuarterStand => Constants["nitrogen-quarter-stand"];

    internal static double RecipeLeastTotal => Constants["recipe-least-total"];

    internal static double RecipeMostTotal => Constants["recipe-most-total"];

    internal static double RecipeTotalLimit => Constants["recipe-total-limit"];

    internal static double RecipeSmallestShare => Constants["recipe-smallest-share"];

    internal static double RecipeLargestShare => Constants["recipe-largest-share"];

    internal static double RecipeStep => Constants["recipe-step"];

    internal static double RecipeFinestStep => Constants["recipe-finest-step"];

    internal static double RecipeCoarsestStep => Constants["recipe-coarsest-step"];
}
