using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Land;

public class LandDocTests
{
    [Fact]
    public void The_page_shows_what_the_code_does() => DocExample.AssertCurrent("docs/land.md", "tests/PlotAgronomy.Tests/Land/LandDocTests.cs", Example);

    [Fact]
    public void The_page_lists_every_finding_of_the_room()
    {
        string page = File.ReadAllText(Repository.PathOf("docs/land.md"));
        Assert.Empty(FindingCatalog.Codes.Where(c => c.StartsWith("land-", StringComparison.Ordinal) && !page.Contains($"`{c}`", StringComparison.Ordinal)));
    }

    private static void Example(TextWriter output)
    {
        // begin example
        var pace = PaceCalibration.FromWalks(Length.FromFeet(400),
            [StepCount.FromSingleSteps(159), StepCount.FromSingleSteps(161), StepCount.FromSingleSteps(160)]);
        var paced = PlotArea.FromRectangle(
            pace.Measure(StepCount.FromSingleSteps(96)),
            pace.Measure(StepCount.FromDoublePaces(40)));
        Print(pace, paced);

        var outline = PlotOutline.Read("""
            latitude, longitude
            31.0000, -84.0000
            31.0000, -83.9988
            31.0011, -83.9994
            """, "hill")[0];
        var walked = PlotArea.FromOutline(outline, fixError: Length.FromMeters(3)).OnSlope(Slope.FromPercent(12));
        var sown = outline.Inset(Length.FromFeet(15));
        Print(walked, sown);
        // end example

        void Print(params IEnumerable<IWorkedResult> results)
        {
            foreach (var result in results)
            {
                foreach (var line in result.ShowWork())
                {
                    output.WriteLine(line);
                }

                foreach (var finding in result.Findings)
                {
                    output.WriteLine(finding);
                }
            }
        }
    }
}
