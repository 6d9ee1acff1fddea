using System.Collections.Immutable;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Calendar;

/// <summary>A verdict is that of the most serious reason, never a sum of them.</summary>
internal static class Verdicts
{
    internal static PlantingVerdict Of(ImmutableArray<Finding> reasons) =>
        reasons.Select(r => r.Severity).DefaultIfEmpty().Max() switch
        {
            FindingSeverity.Warning => PlantingVerdict.Wait,
            FindingSeverity.Caution => PlantingVerdict.SowWithCare,
            _ => PlantingVerdict.Sow,
        };

    /// <summary>Of several kinds: wait where all wait, take care where one does.</summary>
    internal static PlantingVerdict OfSeveral(ImmutableArray<PlantingVerdict> kinds) =>
        kinds.All(v => v == PlantingVerdict.Wait) ? PlantingVerdict.Wait
        : kinds.All(v => v == PlantingVerdict.Sow) ? PlantingVerdict.Sow
        : PlantingVerdict.SowWithCare;
}
