using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>What to say when lime goes above its need.</summary>
internal static class LimeSurplus
{
    /// <summary>Findings for lime above the need by a percentage; none at or below it.</summary>
    internal static IEnumerable<Finding> Findings(double abovePercent)
    {
        if (abovePercent <= Tolerance.Dust)
        {
            yield break;
        }

        bool large = abovePercent > LimingConstants.All["over-planned-percent"];
        yield return FindingCatalog.Create(
            large ? LimingCodes.AboveNeed : LimingCodes.AboveNeedSmall,
            ("percent", Amounts.Print(abovePercent, 1))
        );
        if (large)
        {
            yield return FindingCatalog.Create(LimingCodes.ExtraEffect);
        }
    }
}
