using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Rate, flow, speed and swath that belong together, one of them solved from the others.</summary>
public sealed class SpreaderSetting : IWorkedResult
{
    internal SpreaderSetting() { }

    /// <summary>Gets which one was solved.</summary>
    public required SpreaderUnknown SolvedFor { get; init; }

    /// <summary>Gets the rate on the ground.</summary>
    public required ApplicationRate Rate { get; init; }

    /// <summary>Gets the flow leaving the hopper.</summary>
    public required MassFlow Flow { get; init; }

    /// <summary>Gets the ground speed.</summary>
    public required Speed Speed { get; init; }

    /// <summary>Gets the effective swath, the spacing of the passes.</summary>
    public required Length Swath { get; init; }

    /// <summary>Gets the time to walk or drive 100 ft at this speed.</summary>
    public TimeSpan TimePer100Feet => WalkingPace.TimeFor(Length.FromFeet(100), Speed);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds => ["DEF-UNITS"];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        double poundsPerMinute = Flow.PoundsPerMinute;
        double milesPerHour = Speed.MilesPerHour;
        double feet = Swath.Feet;
        string rate = Amounts.Print(Rate.PoundsPerAcre, 3);
        string flow = Amounts.Print(poundsPerMinute, 4);
        string speed = Amounts.Print(milesPerHour, 3);
        string swath = Amounts.Print(feet, 3);
        return
        [
            SolvedFor switch
            {
                SpreaderUnknown.Rate => new(
                    "Rate",
                    "495 x flow / (speed x swath)",
                    $"495 x {flow} / ({speed} x {swath}) = {rate} lb/ac",
                    "DEF-UNITS"
                ),
                SpreaderUnknown.Flow => new(
                    "Flow",
                    "rate x speed x swath / 495",
                    $"{rate} x {speed} x {swath} / 495 = {flow} lb/min",
                    "DEF-UNITS"
                ),
                SpreaderUnknown.Speed => new(
                    "Speed",
                    "495 x flow / (rate x swath)",
                    $"495 x {flow} / ({rate} x {swath}) = {speed} mph",
                    "DEF-UNITS"
                ),
                _ => new("Swath", "495 x flow / (rate x speed)", $"495 x {flow} / ({rate} x {speed}) = {swath} ft", "DEF-UNITS"),
            },
        ];
    }
}
