using PlotAgronomy.Land;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

public class PassDocTests
{
    [Fact]
    public void The_page_shows_what_the_code_does() => DocExample.AssertCurrent("docs/passes.md", "tests/PlotAgronomy.Tests/Spreading/PassDocTests.cs", Example);

    private static void Example(TextWriter output)
    {
        // begin example
        var plot = PlotOutline.FromCorners(
            [PlanePoint.FromFeet(0, 0), PlanePoint.FromFeet(240, 0), PlanePoint.FromFeet(180, 130), PlanePoint.FromFeet(20, 110)], "Ridge");
        var plan = FieldPasses.Lay(plot, new FieldPassesRequest
        {
            Rate = ApplicationRate.FromPoundsPerAcre(60),
            Swath = Length.FromFeet(18),
            Speed = Speed.FromMilesPerHour(3),
            TurnTime = TimeSpan.FromSeconds(15),
            HopperHolds = Mass.FromPounds(20),
            RefillTime = TimeSpan.FromMinutes(3),
            Bucket = MeasuredBucket.Weighed(Mass.FromPounds(8)),
        });
        foreach (var line in plan.ShowWork())
        {
            output.WriteLine(line);
        }

        foreach (var pass in plan.Passes)
        {
            output.WriteLine($"pass {pass.Number}: from {pass.Start} to {pass.End}, {Amounts.Print(pass.Length, decimals: 0)}, {Amounts.Print(pass.Seed, decimals: 2)}");
        }

        foreach (var load in plan.Loads)
        {
            output.WriteLine($"filling {load.Number}: {Amounts.Print(load.Mass, decimals: 2)}, {Amounts.Print(load.Buckets!.Value, 2)} buckets, runs out in pass {load.RunsOutInPass}");
        }

        foreach (var finding in plan.Findings)
        {
            output.WriteLine(finding);
        }
        // end example
    }
}
