using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>What stands to feed in a season with and without a kind, in parts of a full stand.</summary>
/// <param name="Season">Season.</param>
/// <param name="Before">With the kind.</param>
/// <param name="After">Without it.</param>
/// <param name="Wanted">What covers the season.</param>
internal sealed record SeasonLoss(SeasonOfUse Season, double Before, double After, double Wanted)
{
    internal bool IsCoveredBefore => !Tolerance.IsBelow(Before, Wanted);

    internal bool IsCoveredAfter => !Tolerance.IsBelow(After, Wanted);
}
