using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>Limits of practice, each with its source.</summary>
internal static class BlendRules
{
    private static readonly ConstantTable Constants = new("Blends/Data/constants.csv");

    internal static double SeasonShare => Constants["season-share"];

    internal static double UncertainTotal => Constants["uncertain-total"];

    internal static double PastureKinds => Constants["pasture-kinds"];

    internal static double LegumeShare => Constants["legume-share"];

    internal static double HungryShare => Constants["hungry-share"];

    internal static double ThinBag => Constants["thin-bag"];

    internal static double SmallBatchSpread => Constants["small-batch-spread"];

    internal static double WeighingError => Constants["weighing-error"];

    internal static double ShareChange => Constants["share-change"];
}
