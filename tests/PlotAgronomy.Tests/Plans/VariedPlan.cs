using System.Collections.Immutable;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Plans;

/// <summary>Whole plans with day, pH, drainage, region, treatment, way of sowing, lime day and shelf drawn anew.</summary>
internal static class VariedPlan
{
    private static readonly string[] Plots = ["p01-sand-nc", "p03-clay-smp59-oh", "p05-tiny-vt", "p09-grains-clover-sc", "p11-frost-clover-mo", "p13-chicory-clover-mn"];
    private static readonly string[] Demos = ["fall-blend", "frost-seeding"];

    private static readonly Lazy<ImmutableArray<PlotPlan>> Bases = new(() =>
        [.. Plots.Select(p => SolvedPlan.Read(p)), .. Demos.Select(d => PlanFile.Read(File.ReadAllText(Repository.PathOf($"samples/data/{d}.json"))).Plan!)]);

    internal static IEnumerable<PlotPlan> Draw(int count, int seed)
    {
        var draw = new Random(seed);
        for (int i = 0; i < count; i++)
        {
            yield return Vary(Bases.Value[draw.Next(Bases.Value.Length)], draw);
        }
    }

    private static PlotPlan Vary(PlotPlan plan, Random draw)
    {
        var day = plan.PlantingDate!.Value.AddDays(draw.Next(3) == 0 ? draw.Next(-200, 200) : draw.Next(-20, 20));
        var varied = plan with
        {
            PlantingDate = day,
            LimeDate = draw.Next(4) switch { 0 => null, 1 => day.AddDays(draw.Next(1, 90)), _ => day.AddDays(-draw.Next(10, 400)) },
            Report = plan.Report! with { WaterPh = draw.Next(12) == 0 ? null : WaterPh.FromValue(4.2 + (draw.Next(40) / 10.0)) },
            Plot = plan.Plot with
            {
                Drainage = Maybe(draw, Enum.GetValues<DrainageClass>()),
                PlantingRegion = draw.Next(2) == 0 ? null : PlantingRegion.All[draw.Next(PlantingRegion.All.Length)],
                GrewBefore = draw.Next(3) == 0 ? KindCatalog.Standard.Kinds[draw.Next(KindCatalog.Standard.Kinds.Count)] : null,
            },
            LimeOffers = draw.Next(4) == 0 ? [] : plan.LimeOffers,
            FertilizerOffers = draw.Next(4) switch
            {
                0 => [],
                1 => [plan.FertilizerOffers[draw.Next(plan.FertilizerOffers.Length)]],
                _ => plan.FertilizerOffers,
            },
        };
        return Treated(Sown(varied, draw), draw);
    }

    /// <summary>Only in ways that a rate is published for.</summary>
    private static PlotPlan Sown(PlotPlan plan, Random draw)
    {
        var other = plan with { Method = Enum.GetValues<PlantingMethod>()[draw.Next(5)] };
        return draw.Next(2) == 0 && other.Kinds.All(k => k.Kind.Rates!.For(other.SowingMethod!.Value) is not null) ? other : plan;
    }

    private static PlotPlan Treated(PlotPlan plan, Random draw)
    {
        int treated = draw.Next(3) == 0 ? draw.Next(plan.Kinds.Length) : -1;
        return plan with
        {
            Kinds = [.. plan.Kinds.Select((k, i) => i == treated ? k with { Offer = k.Offer with { Item = k.Offer.Item with { IsTreated = true } } } : k)],
        };
    }

    private static T? Maybe<T>(Random draw, T[] values)
        where T : struct => draw.Next(4) == 0 ? null : values[draw.Next(values.Length)];
}
