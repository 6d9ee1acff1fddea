using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>A weighed run and the rate it gave.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class MeasuredRun
{
    internal MeasuredRun(SpreaderRun run, Length swath)
    {
        Run = run;
        Rate = MeasuredRate.WeighedRun(run.Weighed, run.Distance, swath, time: run.Time);
    }

    /// <summary>Gets the run.</summary>
    public SpreaderRun Run { get; }

    /// <summary>Gets the rate it gave, and its flow when it was timed.</summary>
    public MeasuredRate Rate { get; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Run.ToString();
}
