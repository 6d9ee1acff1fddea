using PlotAgronomy.Liming;

namespace PlotAgronomy.Planning;

/// <summary>Lime that went on since the sample was taken, against what the sample asks for.</summary>
internal static class LimeSinceSample
{
    /// <summary>What goes on now, without what went on since the sample was taken.</summary>
    internal static LimeRate? StillToGo(PlotPlan plan, LimeRate? rate)
    {
        if (rate is null || plan.LimeSinceSample is not { } since)
        {
            return rate;
        }

        double whole = LimePlacing.AtTreatedDepth(plan, rate).OfBasis.PoundsPerAcre;
        double left = LimeSums.LessCredit(whole, since.PoundsPerAcre);
        return left * 100 < whole * PlanningConstants.All["lime-left-least"] ? rate.With(ApplicationRate.Zero)
            : whole > 0 ? rate.With(rate.OfBasis * (left / whole))
            : rate;
    }

    /// <summary>The part of the need that went on since the sample was taken.</summary>
    internal static double Part(PlotPlan plan, LimeRate need) =>
        plan.LimeSinceSample is { } since && LimePlacing.AtTreatedDepth(plan, need).OfBasis is { PoundsPerAcre: > 0 } whole
            ? since / whole
            : 0;
}
