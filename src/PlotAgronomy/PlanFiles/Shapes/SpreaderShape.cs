using PlotAgronomy.Land;
using PlotAgronomy.Spreading;
using UnitsNet;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>The spreader and its weighed runs.</summary>
internal sealed class SpreaderShape : PlanShape<PlannedSpreader>
{
    /// <param name="pace">Field of the plan: the owner's own pace.</param>
    internal SpreaderShape(PlanField<PaceCalibration> pace)
        : base("spreader", "The spreader.")
    {
        var name = Required("name", Text("shoulder spreader"), "Name.", s => s.Name);
        Swath = Required("swath", Length("14 ft"), "Width that one pass covers evenly.", s => s.Swath);
        const string Holds = "What the hopper holds: a volume, or the weight that its label states.";
        Hopper = Optional("hopper", new PlanPackage("25 lb"), Holds, s =>
            s.Hopper is null && s.HopperWeight is null
                ? null
                : new PackageSize(s.Hopper is null ? s.HopperWeight : null, s.Hopper)
        );
        const string Of = "Kind of seed that a weight of the hopper is stated for; asked for where it is left out.";
        var hopperOf = Optional("hopperOf", Kind("winter rye"), Of, s => s.Hopper is null ? s.HopperWeightOf : null)
            .Answers(SpreadingCodes.AskHopper);
        Unsaid("a hopper given by volume and by weight", s => s is { Hopper: not null, HopperWeight: not null });
        var runs = Optional("measuredRuns", List(Run(pace)), "Weighed runs, if there are any.", s => s.Runs)
            .Answers(SpreadingCodes.AskRun);
        ReadAs(at =>
            new()
            {
                Name = at.Get(name),
                Swath = at.Get(Swath),
                Hopper = at.Maybe(Hopper)?.Volume,
                HopperWeight = at.Maybe(Hopper)?.Weight,
                HopperWeightOf = at.Find(hopperOf),
                Runs = at.All(runs),
            }
        );
    }

    internal PlanField<Length> Swath { get; }

    internal PlanField<PackageSize> Hopper { get; }

    private static PlanShape<SpreaderRun> Run(PlanField<PaceCalibration> pace)
    {
        var shape = new PlanShape<SpreaderRun>("measuredRun", "A weighed run with this spreader.");
        var kind = shape.Required("kind", Kind("oats"), "Seed kind that was run, by common name.", r => r.Kind);
        var gate = shape.Required(
            "gate",
            NumberTo<double>("gate-high"),
            "Gate position on the spreader's own scale, a plain number such as 4.",
            r => r.Gate
        );
        var weighed = shape.Required("weighed", Mass("2.1 lb"), "Weight that came out.", r => r.Weighed);
        var walked = new PlanWalked("200 ft", pace).As(l => l.ToLength(), MeasuredLength.FromLength);
        var distance = shape.Required("distance", walked, "Distance walked.", r => r.Distance);
        var time = shape.Optional("time", Time("45 s"), "Time taken; without it the run tells no flow.", r => r.Time)
            .Answers(SpreadingCodes.AskTime);
        shape.ReadAs(at =>
            new()
            {
                Kind = at.Get(kind),
                Gate = at.Get(gate),
                Weighed = at.Get(weighed),
                Distance = at.Get(distance),
                Time = at.Maybe(time),
            }
        );
        return shape;
    }
}
