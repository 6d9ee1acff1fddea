using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Seeds;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

[Properties(Arbitrary = [typeof(PlotArbitraries)])]
public class SpreaderProperties
{
    [Property]
    public bool Rate_flow_speed_and_swath_solve_each_other_back(FsCheck.PositiveInt flow, FsCheck.PositiveInt speed, FsCheck.PositiveInt swath)
    {
        var set = SpreaderSetting.FromFlow(MassFlow.FromPoundsPerMinute(flow.Get / 16.0), Speed.FromMilesPerHour(speed.Get / 10.0), Length.FromFeet(swath.Get / 4.0));
        return Near.Equal(set.Flow.PoundsPerMinute, SpreaderSetting.FlowFor(set.Rate, set.Speed, set.Swath).Flow.PoundsPerMinute)
            && Near.Equal(set.Speed.MilesPerHour, SpreaderSetting.SpeedFor(set.Rate, set.Flow, set.Swath).Speed.MilesPerHour)
            && Near.Equal(set.Swath.Feet, SpreaderSetting.SwathFor(set.Rate, set.Flow, set.Speed).Swath.Feet);
    }

    [Property]
    public bool Metric_and_US_measurements_give_one_rate(Mass seed, FsCheck.PositiveInt distance, FsCheck.PositiveInt swath)
    {
        var us = MeasuredRate.WeighedRun(seed, Length.FromFeet(distance.Get), Length.FromFeet(swath.Get));
        var metric = MeasuredRate.WeighedRun(Mass.FromGrams(seed.Grams), Length.FromMeters(distance.Get * 0.3048), Length.FromCentimeters(swath.Get * 30.48));
        return Near.Equal(us.Rate.PoundsPerAcre, metric.Rate.PoundsPerAcre);
    }

    [Property]
    public bool A_run_at_a_rate_measures_that_rate(ApplicationRate rate, FsCheck.PositiveInt distance, FsCheck.PositiveInt swath)
    {
        if (rate.PoundsPerAcre == 0)
        {
            return true;
        }

        var course = Length.FromFeet(distance.Get);
        var width = Length.FromFeet(swath.Get);
        return Near.Equal(rate.PoundsPerAcre, MeasuredRate.RunOut(MeasuredRate.ExpectedCatch(rate, course, width), course, width).Rate.PoundsPerAcre);
    }

    [Property]
    public bool Load_over_distance_does_not_depend_on_the_swath(ApplicationRate rate, Area plot, FsCheck.PositiveInt swath)
    {
        if (rate.PoundsPerAcre == 0)
        {
            return true;
        }

        var walk = SowingWalk.For(rate, plot, Length.FromFeet(swath.Get));
        return Near.Equal(walk.Load.Pounds, rate.Over(plot).Pounds) && Near.Equal(walk.Distance.Feet * swath.Get, plot.SquareFeet);
    }

    [Property]
    public bool Groups_are_as_few_as_any_division_can_be(FsCheck.NonEmptyArray<FsCheck.PositiveInt> counts)
    {
        var kinds = counts.Get.Take(7).Select((c, i) => PassKind.FromSeedCount($"kind {i}", 1000.0 * (1 + (c.Get * 37 % 800)), sowingDepth: Length.FromInches(c.Get % 3 * 0.5), chaffy: c.Get % 5 == 0)).ToList();
        var plan = SizeGrouping.Arrange(kinds);
        bool allThere = plan.Groups.Sum(g => g.Kinds.Length) == kinds.Count && plan.Groups.SelectMany(g => g.Kinds).Distinct().Count() == kinds.Count;
        bool allowed = plan.Groups.All(g => Allowed([.. g.Kinds]));
        return allThere && allowed && plan.Groups.Length == Partitions(kinds).Where(p => p.TrueForAll(Allowed)).Min(p => p.Count);
    }

    [Property]
    public bool Order_of_the_list_does_not_change_the_passes(FsCheck.NonEmptyArray<FsCheck.PositiveInt> counts)
    {
        var kinds = counts.Get.Take(8).Select((c, i) => PassKind.FromSeedCount($"kind {i}", 1000.0 * (1 + c.Get) + i)).ToList();
        string Shape(IEnumerable<PassKind> order) => string.Join("|", SizeGrouping.Arrange([.. order]).Groups.Select(g => string.Join(",", g.Kinds.Select(k => k.Name))));
        return Shape(kinds) == Shape(kinds.AsEnumerable().Reverse());
    }

    private static bool Allowed(List<PassKind> group) =>
        group.Select(k => k.Chaffy).Distinct().Count() == 1
        && group.Select(k => k.SowingDepth!.Value.Inches > 0.5).Distinct().Count() == 1
        && group.Max(k => k.MilligramsPerSeed) <= 8 * (1 + 1e-8) * group.Min(k => k.MilligramsPerSeed);

    /// <summary>Every division of the kinds into groups: a second, exhaustive way to the smallest number.</summary>
    private static IEnumerable<List<List<PassKind>>> Partitions(List<PassKind> kinds)
    {
        if (kinds.Count == 0)
        {
            yield return [];
            yield break;
        }

        foreach (var rest in Partitions(kinds[1..]))
        {
            yield return [[kinds[0]], .. rest];
            for (int i = 0; i < rest.Count; i++)
            {
                yield return [.. rest.Select((g, j) => j == i ? [kinds[0], .. g] : g)];
            }
        }
    }
}
