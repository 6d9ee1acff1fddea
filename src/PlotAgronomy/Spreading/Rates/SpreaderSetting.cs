using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Rate, flow, speed and swath that belong together, one of them solved from the others.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed partial class SpreaderSetting : IWorkedResult
{
    internal SpreaderSetting() { }

    /// <summary>Gets which one was solved.</summary>
    internal SpreaderUnknown SolvedFor { get; init; }

    /// <summary>Gets the rate on the ground.</summary>
    public required ApplicationRate Rate { get; init; }

    /// <summary>Gets the flow leaving the hopper.</summary>
    public required MassFlow Flow { get; init; }

    /// <summary>Gets the ground speed.</summary>
    public required Speed Speed { get; init; }

    /// <summary>Gets the effective swath, the spacing of the passes.</summary>
    public required Length Swath { get; init; }

    /// <summary>Gets the time to walk or drive 100 ft at this speed.</summary>
    public TimeSpan TimePer100Feet => WalkingPace.TimeFor(TimedDistance, Speed);

    internal static Length TimedDistance => Length.FromFeet(100);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder([.. SpreadingPlausibility.Of(Speed, Swath, Flow, Rate), .. HurriedPace()]);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => SpreadingFormulas.UnitSources;

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        double poundsPerMinute = Flow.PoundsPerMinute;
        double milesPerHour = Speed.MilesPerHour;
        double feet = Swath.Feet;
        var rate = ("rate", Value: Amounts.Print(Rate.PoundsPerAcre, 3));
        var flow = ("flow", Value: Amounts.Print(poundsPerMinute, 4));
        var speed = ("speed", Value: Amounts.Print(milesPerHour, 3));
        var swath = ("swath", Value: Amounts.Print(feet, 3));
        var (formula, answer) = SolvedFor switch
        {
            SpreaderUnknown.Rate => ("spread-rate-from-flow", $"{rate.Value} lb/ac"),
            SpreaderUnknown.Flow => ("spread-flow-for-rate", $"{flow.Value} lb/min"),
            SpreaderUnknown.Speed => ("spread-speed-for-flow", $"{speed.Value} mph"),
            _ => ("spread-swath-for-flow", $"{swath.Value} ft"),
        };
        return [SpreadingFormulas.All[formula].Line(answer, rate, flow, speed, swath, SpreadingFormulas.FlowConstant)];
    }

    /// <summary>A pace that was solved and that nobody keeps on foot.</summary>
    private IEnumerable<Finding> HurriedPace()
    {
        double milesPerHour = Speed.MilesPerHour;
        double limit = SpreadingConstants.All["hurried-pace"];
        if (SolvedFor == SpreaderUnknown.Speed && Tolerance.IsAbove(milesPerHour, limit))
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.HurriedPace,
                ("pace", Amounts.Print(milesPerHour, 1)),
                ("limit", Amounts.Print(limit, 0))
            );
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
