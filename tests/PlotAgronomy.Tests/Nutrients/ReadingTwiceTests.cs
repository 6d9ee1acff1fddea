using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>Practice: of two readings of one kind that differ neither is taken, and the order of the report changes nothing.</summary>
public class ReadingTwiceTests
{
    private static SoilReading Bray(double ppm) => SoilReading.FromPrinted(SoilAnalyte.Phosphorus, ppm, SoilTestUnit.PartsPerMillion, Extractant.BrayP1);

    [Fact]
    public void Two_readings_of_phosphorus_by_one_extractant_are_asked_about()
    {
        foreach (ImmutableArray<SoilReading> readings in (ImmutableArray<SoilReading>[])[[Bray(60), Bray(5)], [Bray(5), Bray(60)]])
        {
            var report = new SoilReport { Laboratory = "Kansas", Readings = readings };
            Assert.Contains("soil-reading-twice", report.Check(new DateOnly(2026, 11, 1)).Select(f => f.Code));
            Assert.Null(report.Find(SoilAnalyte.Phosphorus));
            Assert.Null(report.Find(SoilAnalyte.Phosphorus, Extractant.BrayP1));
            var advice = RecommendationSystem.Kansas.Recommend(report, CropUse.Browsed(RecommendationSystem.Kansas.Accepts.First(t => t.Analyte == SoilAnalyte.Phosphorus).Crops[0]));
            Assert.Null(advice.Phosphate);
            Assert.Contains(advice.Findings, f => f.Text.Contains("5 ppm and 60 ppm", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_order_of_two_kinds_changes_nothing()
    {
        var olsen = SoilReading.FromPrinted(SoilAnalyte.Phosphorus, 12, SoilTestUnit.PartsPerMillion, Extractant.Olsen);
        Assert.Equal(
            new SoilReport { Laboratory = "Kansas", Readings = [Bray(20), olsen] }.Find(SoilAnalyte.Phosphorus),
            new SoilReport { Laboratory = "Kansas", Readings = [olsen, Bray(20)] }.Find(SoilAnalyte.Phosphorus)
        );
    }
}
