using PlotAgronomy.Land;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

/// <summary>Seed decides which way to drive: what a direction costs is path times spacing, all of it thrown.</summary>
public class PassDirectionTests
{
    // By hand: a lane 12 ft wide that rises 10 ft on 400. Along its long side two passes; straight east two passes of 400 ft each,
    // 12 ft apart, throw 24 ft x 400 ft on 4,800 ft2 and 57 % of it twice over.
    [Fact]
    public void A_slanting_lane_is_driven_along_its_side()
    {
        var plan = Lay(Outline((0, 0), (400, 10), (400, 24), (0, 12)), 12, 60);
        double slant = 90 - Math.Atan2(12, 400) * 180 / Math.PI;
        Assert.Contains(plan.Direction.Degrees % 180, new[] { slant, 90 - Math.Atan2(10, 400) * 180 / Math.PI }.Select(d => d % 180), new Near(1e-6));
        Assert.Equal(2, plan.Passes.Length);
        Assert.InRange(plan.Seed.Pounds, 7, 7.8);
    }

    /// <summary>Best direction found by trying every other degree and every side, in the test.</summary>
    [Fact]
    public void Of_four_hundred_plots_the_mean_outside_is_that_of_the_best_direction()
    {
        var random = new Random(20_26);
        double chosen = 0, best = 0;
        int alongSide = 0, plots = 0;
        while (plots < 400)
        {
            var corners = Enumerable.Range(0, 4)
                .Select(i => (Angle: Math.PI / 2 * (i + 0.15 + 0.7 * random.NextDouble()), Feet: 60 + 240 * random.NextDouble()))
                .Select(c => PlanePoint.FromFeet(c.Feet * Math.Cos(c.Angle), c.Feet * Math.Sin(c.Angle)));
            var outline = PlotOutline.FromCorners([.. corners]);
            double swath = 8 + 22 * random.NextDouble();
            var plan = Lay(outline, swath, 10);
            double[] sides = [.. outline.Corners.Select((c, i) => SideOf(c, outline.Corners[(i + 1) % 4]))];
            var others = Enumerable.Range(0, 90).Select(d => d * 2.0).Concat(sides)
                .Select(d => Lay(outline, swath, 10, d))
                .Where(p => p.Passes.Length <= plan.Passes.Length);
            chosen += plan.OutsideShare;
            best += others.Min(p => p.OutsideShare);
            alongSide += sides.Any(s => Math.Abs((s - plan.Direction.Degrees) % 180) is < 1e-6 or > 180 - 1e-6) ? 1 : 0;
            plots++;
        }

        Assert.InRange(100 * (chosen - best) / plots, -0.001, 0.2);
        Assert.InRange(alongSide, 200, 400);
    }

    [Fact]
    public void The_runner_up_says_what_it_costs()
    {
        var plan = Lay(Outline((0, 0), (300, 0), (300, 200), (0, 260)), 20, 40);
        var other = plan.RunnerUp;
        if (other is not null)
        {
            Assert.True(other.Seed.Pounds > plan.Seed.Pounds - 1e-9 || other.Passes.Length > plan.Passes.Length);
            Assert.Contains(plan.ShowWork(), l => l.ToString().Contains(other.Direction.ToString(), StringComparison.Ordinal));
        }

        // A square is as well driven across: told in the working, with the same seed.
        var square = Lay(Outline((0, 0), (240, 0), (240, 240), (0, 240)), 20, 40);
        Assert.Equal(0, square.RunnerUp!.Direction.Degrees % 180, 1e-9);
        Assert.Equal(square.Seed.Pounds, square.RunnerUp.Seed.Pounds, 1e-9);
        Assert.Contains(square.ShowWork(), l => l.ToString().Contains("12 passes towards", StringComparison.Ordinal));
        Assert.Null(Lay(square.Outline, 20, 40, 90).RunnerUp);
    }

    /// <summary>Second way: the plan along the other direction itself. Its seed counts the lap, and so must the line that tells of
    /// it.</summary>
    [Fact]
    public void What_the_other_direction_takes_counts_the_lap_too()
    {
        var request = new FieldPassesRequest
        {
            Rate = ApplicationRate.FromPoundsPerAcre(30),
            Swath = Length.FromFeet(18),
            Speed = Speed.FromMilesPerHour(3),
            HeadlandLap = true,
        };
        var plan = FieldPasses.Lay(Outline((0, 0), (240, 0), (200, 150), (20, 170)), request);
        string seed = Amounts.Print(plan.RunnerUp!.Seed, decimals: 3);
        Assert.Contains(plan.ShowWork(), l => l.Label == "Seed another way" && l.ToString().Contains($" = {seed} in ", StringComparison.Ordinal));
        Assert.True(plan.RunnerUp.Seed.Pounds > plan.Seed.Pounds);
    }

    // By hand: a comb of three teeth, 20 ft wide and 200 ft long, 60 ft apart on a back of 20 ft.
    [Fact]
    public void Pieces_are_finished_one_after_the_other_and_the_walk_between_is_counted()
    {
        var comb = Outline((0, 0), (160, 0), (160, 220), (140, 220), (140, 20), (90, 20), (90, 220), (70, 220), (70, 20), (20, 20), (20, 220), (0, 220));
        var plan = Lay(comb, 20, 10, 0);
        Assert.Equal(plan.Passes.Sum(p => p.Length.Feet) + plan.WalkBetween.Feet, plan.Path.Feet, 1e-6);

        var across = Lay(comb, 20, 10, 90);
        // A back of one pass and three teeth of ten short passes: each tooth is finished before the next.
        double[] teeth = [.. across.Passes.Where(p => p.Length.Feet < 30).Select(p => Math.Floor(Math.Min(p.Start.EastFeet, p.End.EastFeet) / 60))];
        Assert.Equal(30, teeth.Length);
        Assert.Equal(3, 1 + teeth.Zip(teeth.Skip(1)).Count(t => t.First != t.Second));
        Assert.InRange(across.WalkBetween.Feet, 1, 700);
        Assert.True(across.TotalTime > across.SpreadingTime);
        Assert.Equal(across.Path.Feet / 264, across.TotalTime.TotalMinutes, 1e-6);
        Assert.Equal(0, Lay(Outline((0, 0), (300, 0), (300, 100), (0, 100)), 20, 10).WalkBetween.Feet);
    }

    /// <summary>An outline of thousands of corners: bytes, which do not depend on how busy a machine is.</summary>
    [Fact]
    public void Many_corners_take_little_memory()
    {
        var round = PlotOutline.FromCorners([.. Enumerable.Range(0, 8000)
            .Select(i => (Angle: 2 * Math.PI * i / 8000, Feet: 300 + 5 * Math.Sin(40 * Math.PI * i / 8000)))
            .Select(c => PlanePoint.FromFeet(c.Feet * Math.Cos(c.Angle), c.Feet * Math.Sin(c.Angle)))]);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.NotEmpty(Lay(round, 12, 10).Passes);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 40_000_000);
    }

    private static double SideOf(PlanePoint from, PlanePoint to) =>
        (450 - Math.Atan2(to.NorthFeet - from.NorthFeet, to.EastFeet - from.EastFeet) * 180 / Math.PI) % 360;

    private static PlotOutline Outline(params (double East, double North)[] corners) =>
        PlotOutline.FromCorners([.. corners.Select(c => PlanePoint.FromFeet(c.East, c.North))]);

    private static FieldPasses Lay(PlotOutline outline, double swath, double pounds, double? along = null) =>
        FieldPasses.Lay(outline, new FieldPassesRequest
        {
            Rate = ApplicationRate.FromPoundsPerAcre(pounds),
            Swath = Length.FromFeet(swath),
            Speed = Speed.FromMilesPerHour(3),
            Along = along is { } degrees ? Bearing.FromDegrees(degrees) : null,
        });

    private sealed class Near(double within) : IEqualityComparer<double>
    {
        public bool Equals(double one, double other) => Math.Abs(one - other) <= within;

        public int GetHashCode(double value) => 0;
    }
}
