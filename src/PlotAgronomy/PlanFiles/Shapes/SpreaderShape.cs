using UnitsNet;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>The spreader and its weighed runs.</summary>
internal sealed class SpreaderShape : PlanShape<PlannedSpreader>
{
    internal SpreaderShape()
        : base("spreader", "The spreader.")
    {
        var name = Required("name", Text("shoulder spreader"), "Name.", s => s.Name);
        Swath = Required("swath", Length("14 ft"), "Width that one pass covers evenly.", s => s.Swath);
        var hopper = Optional("hopper", Volume("3 gal"), "Hopper volume.", s => s.Hopper);
        var runs = Optional("measuredRuns", List(Run()), "Weighed runs, if there are any.", s => s.Runs);
        ReadAs(at =>
            new()
            {
                Name = at.Get(name),
                Swath = at.Get(Swath),
                Hopper = at.Maybe(hopper),
                Runs = at.All(runs),
            }
        );
    }

    internal PlanField<Length> Swath { get; }

    private static PlanShape<SpreaderRun> Run()
    {
        var shape = new PlanShape<SpreaderRun>("measuredRun", "A weighed run with this spreader.");
        var kind = shape.Required("kind", Kind("oats"), "Seed kind that was run, by common name.", r => r.Kind);
        var gate = shape.Required("gate", NumberTo<double>("gate-high"), "Gate position on the spreader's own scale.", r =>
            r.Gate
        );
        var weighed = shape.Required("weighed", Mass("2.1 lb"), "Weight that came out.", r => r.Weighed);
        var distance = shape.Required("distance", Length("200 ft"), "Distance walked.", r => r.Distance);
        var time = shape.Required("time", Time("45 s"), "Time taken.", r => r.Time);
        shape.ReadAs(at =>
            new()
            {
                Kind = at.Get(kind),
                Gate = at.Get(gate),
                Weighed = at.Get(weighed),
                Distance = at.Get(distance),
                Time = at.Get(time),
            }
        );
        return shape;
    }
}
