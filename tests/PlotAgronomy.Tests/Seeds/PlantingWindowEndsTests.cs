using PlotAgronomy.Seeds;

namespace PlotAgronomy.Tests.Seeds;

/// <summary>Every published window at its ends: both days belong to it, the days before and after do not. The days themselves are checked
/// against what is printed (<see cref="PrintedChecks"/>).</summary>
public class PlantingWindowEndsTests
{
    private const int Year = 2025;

    private static IEnumerable<PlantingWindow> Windows =>
        from kind in KindCatalog.Standard.Kinds
        from region in PlantingRegion.All
        from window in PlantingWindow.Published(kind, region).Concat(PlantingWindow.FromMemory(kind, region))
        select window;

    [Fact]
    public void Both_ends_belong_to_it_and_no_day_beyond()
    {
        int windows = 0, latest = 0, notRecommended = 0;
        foreach (var window in Windows)
        {
            string name = $"{window.Kind.Id}, {window.Region}, {window}";
            Assert.False(window.Evidence.Sources.IsEmpty, name);
            var (first, last) = (window.FirstDay(Year), window.LastDay(Year));
            switch (window.Rule)
            {
                case PlantingRule.Window:
                    windows++;
                    Assert.True(first < last, name);
                    Assert.True(window.Allows(first!.Value) && window.Allows(last!.Value), name);
                    Assert.False(window.Allows(first.Value.AddDays(-1)) || window.Allows(last.Value.AddDays(1)), name);
                    break;
                case PlantingRule.Latest:
                    latest++;
                    Assert.Null(first);
                    Assert.True(window.Allows(last!.Value) && window.Allows(new(Year, 1, 1)), name);
                    Assert.False(window.Allows(last.Value.AddDays(1)), name);
                    break;
                default:
                    notRecommended++;
                    Assert.Null(last);
                    Assert.DoesNotContain(Enumerable.Range(0, 365), day => window.Allows(new DateOnly(Year, 1, 1).AddDays(day)));
                    break;
            }
        }

        Assert.True(windows > 100 && latest > 0 && notRecommended > 0, $"{windows}, {latest} and {notRecommended}");
    }
}
