using PlotAgronomy.Land;
using PlotAgronomy.Spreading;
using UnitsNet;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>Passes laid over plots of several shapes.</summary>
internal static class PassSums
{
    private static readonly (string Words, PlotOutline Outline)[] Plots =
    [
        ("a long field", PlotOutline.Rectangle(Feet(436), Feet(100))),
        ("a wedge", Corners((0, 0), (220, 10), (240, 130), (120, 90), (-10, 140))),
        ("a corner", Corners((0, 0), (200, 0), (200, 80), (90, 80), (90, 210), (0, 210))),
        ("two fields and a neck",
            Corners((0, 0), (100, 0), (100, 45), (180, 45), (180, 0), (280, 0), (280, 100), (180, 100), (180, 55), (100, 55),
                (100, 100), (0, 100))),
        ("a strip narrower than the swath", PlotOutline.Rectangle(Feet(100), Feet(10))),
    ];

    internal static void Record(Recorder recorder)
    {
        foreach (var (words, plot) in Plots)
        {
            foreach (var placement in Enum.GetValues<FirstPassPlacement>())
            {
                foreach (bool lap in new[] { false, true })
                {
                    foreach (double swath in new[] { 12.0, 15 })
                    {
                        string name = $"passes over {words}, {Words(placement)}{(lap ? ", a lap first" : "")}, swath {swath} ft";
                        recorder.Call(name, () => Short(FieldPasses.Lay(plot, Options(placement, lap, swath))));
                    }
                }
            }

            var plan = FieldPasses.Lay(plot, Options(FirstPassPlacement.HalfSpacingInside, false, 15));
            recorder.Call($"passes over {words}: covered after each",
                () => Enumerable.Range(0, plan.Passes.Length + 1).Select(plan.CoveredAfter));
            recorder.Call($"passes over {words}: one pass", () => plan.Passes[0]);
            recorder.Add($"passes over {words}, drawn", "picture.digest", Digest(plan.ToSvg()));
            recorder.Call($"passes over {words}, along a bearing", () => Short(FieldPasses.Lay(plot, new FieldPassesRequest
            {
                Rate = PerAcre(10),
                Swath = Feet(15),
                Speed = Mph(3),
                Along = Bearing.FromDegrees(35),
            })));
        }
    }

    private static PlotOutline Corners(params (double East, double North)[] corners) =>
        PlotOutline.FromCorners([.. corners.Select(c => PlanePoint.FromFeet(c.East, c.North))]);

    private static FieldPassesRequest Options(FirstPassPlacement placement, bool lap, double swath) => new()
    {
        Rate = PerAcre(10),
        Swath = Feet(swath),
        Speed = Mph(3),
        HeadlandLap = lap,
        FirstPass = placement,
        TurnTime = TimeSpan.FromSeconds(10),
        RefillTime = TimeSpan.FromMinutes(3),
        HopperHolds = Pounds(4),
        Bucket = MeasuredBucket.Weighed(Pounds(2)),
    };

    private static Dictionary<string, object?> Short(FieldPasses plan) => Named(
        ("passes", plan.Passes.Select(p => (p.Start.EastFeet, p.Start.NorthFeet, p.End.EastFeet, p.End.NorthFeet, p.Seed))),
        ("spacing", plan.Spacing),
        ("direction", plan.Direction.Degrees),
        ("lap", plan.LapLength),
        ("path", plan.Path),
        ("turns", plan.Turns),
        ("loads", plan.Loads.Select(l => (l.Mass, l.RunsOutInPass, l.Buckets))),
        ("seed", plan.Seed),
        ("outside", plan.OutsideShare),
        ("refills", plan.Refills),
        ("spreading", plan.SpreadingTime),
        ("total", plan.TotalTime),
        ("efficiency", plan.FieldEfficiency),
        ("if the gate stays", plan.RateIfGateStays.Actual),
        ("Findings", plan.Findings));
}
