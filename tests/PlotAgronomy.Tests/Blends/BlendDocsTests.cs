using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Blends;

public class BlendDocsTests
{
    [Fact]
    public void The_page_shows_code_that_runs() =>
        DocExample.AssertCurrent("docs/blends.md", "tests/PlotAgronomy.Tests/Blends/BlendDocsTests.cs", Example);

    private static void Example(TextWriter output)
    {
        // begin example
        var kinds = KindCatalog.Standard;
        BlendComponent Tagged(string kind, double purity, double viability) =>
            BlendComponent.FromKind(kinds.Find(kind), SowingMethod.Broadcast) with { Purity = Fraction.FromPercent(purity), Viability = Fraction.FromPercent(viability) };

        var blend = Blend.FromSharesOfFullStand(
            (Tagged("oats-spring", 98, 90), 0.40),
            (Tagged("medium-red-clover", 66, 90), 0.60),
            (Tagged("daikon-radish", 99, 92), 0.40));
        output.WriteLine(blend.StandTotal);
        foreach (var part in blend.Parts)
        {
            output.WriteLine($"{part.Kind.ShortName}: {part.ShareOfStand} of the stand, {part.ShareOfLiveSeeds} of the seeds, {part.ShareOfBulkWeight} of the weight");
        }

        foreach (var line in blend.WeighFor(Area.FromAcres(0.5)).RoundUpTo(Mass.FromPounds(0.1)).Lines)
        {
            output.WriteLine($"weigh out {line}");
        }

        foreach (var finding in CrowdingReport.For(blend).Findings.Where(f => f.Severity != FindingSeverity.Note))
        {
            output.WriteLine(finding);
        }

        foreach (var season in SeasonCoverage.For(blend).Seasons)
        {
            output.WriteLine($"{season.Season}: {(season.IsCovered ? "covered" : "a gap")}");
        }
        // end example
    }
}
