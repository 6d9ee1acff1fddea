using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Soil;

/// <summary>The sums people look for, as the page shows them.</summary>
public class SoilSumsDocExample
{
    [Fact]
    public void The_sums_of_the_page_are_what_the_code_writes() =>
        DocExample.AssertCurrent("docs/soil.md", "tests/PlotAgronomy.Tests/Soil/SoilSumsDocExample.cs", Run, block: 1);

    internal static void Run(TextWriter output)
    {
        // begin example
        // Some laboratories print a lime test index or the pH in salt.
        var buffer = BufferPh.FromLimeTestIndex(67, SoilBuffer.Smp);
        output.WriteLine($"{buffer}, lime test index {Amounts.Print(buffer.LimeTestIndex, 0)}; {SaltPh.FromValue(5.1)}");

        // A pH typed without its point, and a core deeper than the method wants.
        output.WriteLine(SoilReport.CheckTypedPh(62)[0]);
        var report = new SoilReport { Laboratory = "an invented laboratory", SampledDepth = Length.FromInches(10) };
        output.WriteLine(report.CheckDepth(Length.FromInches(6), "the method")[0]);

        // What an inch more of soil weighs, and how an institution wants its samples.
        var layer = SampledLayer.FromDepth(Length.FromInches(8));
        output.WriteLine($"{Amounts.Print(layer.Depth, "in", 0)} of soil: {Amounts.Print(layer.SoilMass, "lb/ac", 0)}");
        foreach (var rule in Institution.Find("mississippi").SamplingRules)
        {
            string area = rule.LargestArea is { } largest ? $", at most {Amounts.Print(largest, "ac", 0)}" : "";
            output.WriteLine($"{rule.Title}: {rule.FewestCores} to {rule.MostCores} cores{area}");
        }

        output.WriteLine(Institution.NorthCarolina.SoilProgram);
        // end example
    }
}
