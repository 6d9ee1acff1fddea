using System.Collections.Immutable;

namespace PlotAgronomy.Liming;

/// <summary>The lime a soil needs, and the methods that can say so.</summary>
public static class LimeRequirement
{
    extension(LimeNeed need)
    {
        /// <summary>Gets what to ask where the method does not answer; none where it does.</summary>
        public ImmutableArray<OpenQuestion> Questions => [.. LimeQuestions.For(need)];
    }

    /// <summary>The lime a soil needs by this method.</summary>
    /// <param name="method">Method.</param>
    /// <param name="sample">Report and readings.</param>
    /// <param name="targetPh">pH aimed at; from 4 to 9.</param>
    /// <param name="earlier">Lime put on before that is not yet all at work, or null.</param>
    /// <param name="readingErrorPh">How far a pH reading may be off; from 0 to 1; null takes 0.1 (LIME-S38).</param>
    /// <returns>The need; its rate is null, with a finding, where the method does not answer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static LimeNeed NeedFor(
        this LimeMethod method,
        LimeSample sample,
        double targetPh,
        EarlierLime? earlier = null,
        double? readingErrorPh = null
    )
    {
        ArgumentNullException.ThrowIfNull(method);
        ArgumentNullException.ThrowIfNull(sample);
        double target = LimeLimits.TargetPh(targetPh, nameof(targetPh));
        double error = Guard.Between(
            readingErrorPh ?? LimingConstants.All["reading-error"],
            0,
            LimingConstants.All["largest-reading-error"],
            "pH",
            nameof(readingErrorPh)
        );
        return new LimeNeed(method, sample, target, earlier, error);
    }

    /// <summary>The lime a soil needs by this method, from a report alone.</summary>
    /// <param name="method">Method.</param>
    /// <param name="report">Report.</param>
    /// <param name="targetPh">pH aimed at; from 4 to 9.</param>
    /// <param name="earlier">Lime put on before that is not yet all at work, or null.</param>
    /// <param name="readingErrorPh">How far a pH reading may be off; from 0 to 1; null takes 0.1 (LIME-S38).</param>
    /// <returns>The need.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static LimeNeed NeedFor(
        this LimeMethod method,
        SoilReport report,
        double targetPh,
        EarlierLime? earlier = null,
        double? readingErrorPh = null
    ) => method.NeedFor(LimeSample.From(report), targetPh, earlier, readingErrorPh);

    /// <summary>The methods that accept a sample: its soil is theirs and the reading they need is on the report.</summary>
    /// <param name="sample">Sample.</param>
    /// <param name="includeFromMemory">Whether to name the methods whose numbers are from memory as well.</param>
    /// <returns>The methods, in the order of their ids.</returns>
    public static ImmutableArray<LimeMethod> Accepting(LimeSample sample, bool includeFromMemory = false)
    {
        ArgumentNullException.ThrowIfNull(sample);
        var asked = includeFromMemory ? LimeMethod.Everything : LimeMethod.All;
        return [.. asked.Where(m => m.Soils.Contains(sample.Class) && m.Formula.ReadingOf(sample) is not null)];
    }
}
