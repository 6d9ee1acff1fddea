using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Tests.Blends;

/// <summary>In each direction its own caution: going on the same way never ends it. Facts of the trade: a later day is no less late,
/// sourer soil no less sour, wetter ground no less wet.</summary>
public sealed class FitDirectionTests
{
    private static readonly string[] InOrder = ["", "blend-date-late", "blend-out-of-season", "blend-date-early"];

    public static TheoryData<string> Kinds =>
        [.. KindCatalog.Standard.Kinds.Where(k => k.SeedCount is not null && k.Rates?.For(SowingMethod.Broadcast) is not null).Select(k => k.Id)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Late_comes_before_out_of_season_and_that_before_early(string kind)
    {
        foreach (var region in PlantingRegion.All.Where(r => !PlantingWindow.Published(KindCatalog.Standard.Find(kind), r).IsEmpty))
        {
            var windows = PlantingWindow.Published(KindCatalog.Standard.Find(kind), region);
            if (windows.All(w => w.Rule == PlantingRule.NotRecommended))
            {
                continue;
            }

            var start = Enumerable.Range(0, 366).Select(new DateOnly(2026, 1, 1).AddDays).First(d => windows.Any(w => w.Allows(d)));
            int before = 0;
            for (var day = start; day <= start.AddDays(365); day = day.AddDays(1))
            {
                int now = Array.IndexOf(InOrder, SowingDay.Of(day, windows).Code ?? "");
                Assert.True(now == 0 || now >= before, $"{kind}, {region}, {day:O}: {InOrder[before]} ended by {InOrder[now]}");
                before = now;
            }
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Sourer_soil_never_ends_too_sour_and_limier_soil_never_ends_too_high(string kind)
    {
        bool[] low = [.. Readings.Select(ph => Codes(kind, new() { Soil = FitTests.Ground(ph) }).Contains("blend-ph-low"))];
        bool[] high = [.. Readings.Select(ph => Codes(kind, new() { Soil = FitTests.Ground(ph) }).Contains("blend-ph-high"))];
        Assert.Equal(low.OrderDescending(), low);
        Assert.Equal(high.Order(), high);
        Assert.Equal(KindCatalog.Standard.Find(kind).Ph is not null, low[0]);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Wetter_ground_never_ends_too_wet_and_drier_ground_never_ends_too_dry(string kind)
    {
        var ground = Enum.GetValues<DrainageClass>().Order().ToArray();
        bool[] wet = [.. ground.Select(d => Codes(kind, new() { Soil = FitTests.Ground(drainage: d) }).Contains("blend-ground-wet"))];
        bool[] dry = [.. ground.Select(d => Codes(kind, new() { Soil = FitTests.Ground(drainage: d) }).Contains("blend-ground-dry"))];
        Assert.Equal(wet.OrderDescending(), wet);
        Assert.Equal(dry.Order(), dry);
        Assert.DoesNotContain(true, wet.Zip(dry, (w, d) => w && d));
    }

    private static IEnumerable<double> Readings => Enumerable.Range(30, 71).Select(tenths => tenths / 10.0);

    private static string[] Codes(string kind, BlendFitRequest request) =>
        [.. BlendFit.For(Alone(kind).WeighFor(Area.FromAcres(1)), request).Findings.Select(f => f.Code)];

    private static Blend Alone(string kind) =>
        Blend.FromSharesOfFullStand((BlendComponent.FromKind(KindCatalog.Standard.Find(kind), SowingMethod.Broadcast), 0.5));
}
