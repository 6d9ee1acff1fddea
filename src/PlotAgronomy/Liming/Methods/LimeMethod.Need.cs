using System.Collections.Immutable;
using PlotAgronomy.Liming;

namespace PlotAgronomy;

/// <content>The lime a soil needs, and the methods that can say so.</content>
public sealed partial class LimeMethod
{
    /// <summary>The lime a soil needs by this method.</summary>
    /// <param name="soil">Soil; a report will do.</param>
    /// <param name="targetPh">pH aimed at; from 4 to 9.</param>
    /// <param name="earlier">Lime put on before that is not yet all at work, or null.</param>
    /// <param name="readingErrorPh">How far a pH reading may be off; from 0 to 1; null takes 0.1 (LIME-S38).</param>
    /// <returns>The need; its rate is null, with a finding, where the method does not answer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public LimeNeed NeedFor(PlotSoil soil, double targetPh, EarlierLime? earlier = null, double? readingErrorPh = null)
    {
        ArgumentNullException.ThrowIfNull(soil);
        double target = LimeLimits.TargetPh(targetPh, nameof(targetPh));
        double error = Guard.Between(
            readingErrorPh ?? LimingConstants.All["reading-error"],
            0,
            LimingConstants.All["largest-reading-error"],
            "pH",
            nameof(readingErrorPh)
        );
        return new LimeNeed(this, soil, target, earlier, error);
    }

    /// <summary>The methods that accept a soil: its class is theirs and the reading they need is on the report.</summary>
    /// <param name="soil">Soil; a report will do.</param>
    /// <param name="includeFromMemory">Whether to name the methods whose numbers are from memory as well.</param>
    /// <returns>The methods, in the order of their ids.</returns>
    public static ImmutableArray<LimeMethod> Accepting(PlotSoil soil, bool includeFromMemory = false)
    {
        ArgumentNullException.ThrowIfNull(soil);
        var asked = includeFromMemory ? Everything : All;
        return [.. asked.Where(m => m.Soils.Contains(soil.Class) && m.Formula.ReadingOf(soil) is not null)];
    }
}
