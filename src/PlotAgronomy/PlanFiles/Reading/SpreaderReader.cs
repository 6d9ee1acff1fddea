using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.PlanFiles;

/// <summary>Reads the spreader of a plan file.</summary>
internal static class SpreaderReader
{
    internal static PlannedSpreader? Read(PlanObject spreader)
    {
        var swath = spreader.PositiveAmount<Length>("swath", Amounts.TryReadLength, l => l.Feet);
        var hopper = spreader.PositiveAmount<Volume>("hopper", Amounts.TryReadVolume, v => v.CubicFeet);
        var runs = spreader.Objects("measuredRuns").Select(Run).OfType<SpreaderRun>().ToImmutableArray();
        return spreader.Text("name") is { } name && swath is Length width
            ? new PlannedSpreader
            {
                Name = name,
                Swath = width,
                Hopper = hopper,
                Runs = runs,
            }
            : null;
    }

    private static SpreaderRun? Run(PlanObject run)
    {
        var kind = KindReader.Read(run, "kind");
        var weighed = run.PositiveAmount<Mass>("weighed", Amounts.TryReadMass, m => m.Pounds);
        var distance = run.PositiveAmount<Length>("distance", Amounts.TryReadLength, l => l.Feet);
        var time = run.PositiveAmount<TimeSpan>("time", Amounts.TryReadDuration, t => t.TotalSeconds);
        return
            kind is not null
            && run.Number("gate") is >= 0 and var gate
            && weighed is Mass mass
            && distance is Length length
            && time is TimeSpan taken
            ? new SpreaderRun
            {
                Kind = kind,
                Gate = gate,
                Weighed = mass,
                Distance = length,
                Time = taken,
            }
            : null;
    }
}
