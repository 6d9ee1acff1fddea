using PlotAgronomy.Seeds;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

/// <summary>Gate and pace of a pass by the weighed runs. Expected flows, rates and paces are hand algebra on R = 495 F / (v S).</summary>
public class SpreaderSetupTests
{
    private static readonly CropKind Clover = KindCatalog.Standard.Find("crimson");
    private static readonly CropKind Oats = KindCatalog.Standard.Find("oats-spring");
    private static readonly Length Swath = Length.FromFeet(15);
    private static readonly Speed Pace = Speed.FromMilesPerHour(3);

    /// <summary>Settings and flows of a table whose inverse was computed by a second implementation: 1.0 lb/min at 4.95101.</summary>
    private static readonly (double Gate, double Flow)[] Known = [(2, 0.15), (4, 0.62), (6, 1.55), (8, 2.95), (10, 4.70)];

    [Fact]
    public void One_run_gives_the_pace_for_its_gate_and_no_table()
    {
        // 0.15 lb in a minute; 495 x 0.15 / (11 x 15) = 0.45 mph.
        var setup = Set([(Clover, 11)], Run(Clover, 2, 0.15));
        Assert.Equal(2, setup.Taken!.Run.Gate);
        Near.Assert(0.45, setup.PaceForGate!.Speed.MilesPerHour, 1e-9);
        Assert.Null(setup.Gates);
        Assert.Null(setup.GateForPace);
        Assert.Contains("at least two different settings", setup.WhyNoTable, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_runs_of_a_kind_make_a_table_and_the_one_closest_in_rate_is_taken()
    {
        // 11 lb/ac at 3 mph over 15 ft needs 11 x 3 x 15 / 495 = 1 lb/min; 1.55 is closer to it than 0.62 by their ratio, and
        // gives 495 x 1.55 / (11 x 15) = 4.65 mph.
        var setup = Set([(Clover, 11)], [.. Known.Select(k => Run(Clover, k.Gate, k.Flow))]);
        Assert.Equal(6, setup.Taken!.Run.Gate);
        Near.Assert(4.65, setup.PaceForGate!.Speed.MilesPerHour, 1e-9);
        Assert.Equal(5, setup.Gates!.Points.Length);
        Near.Assert(1, setup.FlowForPace!.Flow.PoundsPerMinute, 1e-9);
        Assert.Equal(4.95101, setup.GateForPace!.Setting!.Value, 5e-6);
        Assert.Null(setup.WhyNoTable);
    }

    [Fact]
    public void The_run_is_of_the_kind_with_most_weight_in_the_pass_and_so_is_the_table()
    {
        var setup = Set([(Clover, 8), (Oats, 60)], Run(Clover, 2, 0.5), Run(Oats, 5, 3), Run(Clover, 3, 0.9), Run(Oats, 6, 4));
        Near.Assert(68, setup.Rate.PoundsPerAcre);
        Assert.Equal([(Oats, 6.0), (Oats, 5.0), (Clover, 3.0), (Clover, 2.0)], setup.Runs.Select(r => (r.Run.Kind, r.Run.Gate)));
        Assert.Equal([5.0, 6], setup.Gates!.Points.Select(p => p.Setting));
        Assert.Equal(Oats.ShortName, setup.Gates.Material);
        // 495 x 4 / (68 x 15) = 1.941176 mph.
        Near.Assert(495 * 4 / (68.0 * 15), setup.PaceForGate!.Speed.MilesPerHour, 1e-9);
    }

    [Fact]
    public void Runs_of_other_kinds_do_not_count()
    {
        var setup = Set([(Clover, 8)], Run(Oats, 5, 3), Run(Oats, 6, 4));
        Assert.Null(setup.Taken);
        Assert.Null(setup.PaceForGate);
        Assert.Null(setup.Gates);
        Assert.Equal("none of the kinds was run", setup.WhyNoTable);
        Assert.Empty(setup.Findings);
        Assert.Empty(setup.ShowWork());
    }

    [Fact]
    public void Runs_that_make_no_table_still_give_a_pace()
    {
        var setup = Set([(Clover, 8)], Run(Clover, 1, 0.5), Run(Clover, 2, 0.4), Run(Clover, 3, 0.9), Run(Clover, 4, 0.8), Run(Clover, 5, 1.8));
        Assert.Null(setup.Gates);
        Assert.Contains("falls more than once", setup.WhyNoTable, StringComparison.Ordinal);
        // Of 5.5, 4.4, 9.9, 8.8 and 19.8 lb/ac the fourth is closest to 8: 495 x 0.8 / (8 x 15) = 3.3 mph.
        Near.Assert(3.3, setup.PaceForGate!.Speed.MilesPerHour, 1e-9);
    }

    [Fact]
    public void A_run_without_a_time_tells_a_rate_and_no_pace()
    {
        // 0.5 lb over 200 ft x 15 ft: 0.5 x 43,560 / 3000 = 7.26 lb/ac.
        var setup = Set([(Clover, 8)], new SpreaderRun { Kind = Clover, Gate = 2, Weighed = Mass.FromPounds(0.5), Distance = Length.FromFeet(200) });
        Near.Assert(7.26, setup.Taken!.Rate.Rate.PoundsPerAcre, 1e-9);
        Assert.Null(setup.PaceForGate);
        Assert.Null(setup.Gates);
    }

    [Fact]
    public void A_gate_outside_the_runs_is_not_guessed()
    {
        // 1 lb/ac at 3 mph over 15 ft needs 1 / 11 lb/min, less than the smallest flow that was measured.
        var setup = Set([(Clover, 1)], [.. Known.Select(k => Run(Clover, k.Gate, k.Flow))]);
        Assert.NotNull(setup.Gates);
        Assert.Null(setup.GateForPace!.Setting);
        Assert.Contains(setup.Findings, f => f.Code == "spread-flow-too-small");
    }

    [Fact]
    public void A_pass_needs_a_kind_and_a_rate()
    {
        Assert.Throws<ArgumentException>(() => Set([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Set([(Clover, 0)], Run(Clover, 2, 0.5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Set([(Clover, 8)], Run(Clover, double.NaN, 0.5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Set([(Clover, 8)], Run(Clover, 2, 0)));
    }

    private static SpreaderSetup Set((CropKind Kind, double PoundsPerAcre)[] kinds, params SpreaderRun[] runs) =>
        SpreaderSetup.For([.. kinds.Select(k => (k.Kind, ApplicationRate.FromPoundsPerAcre(k.PoundsPerAcre)))], Swath, runs, Pace);

    /// <summary>A run of one minute, so that its weight is its flow.</summary>
    private static SpreaderRun Run(CropKind kind, double gate, double pounds) => new()
    {
        Kind = kind,
        Gate = gate,
        Weighed = Mass.FromPounds(pounds),
        Distance = Length.FromFeet(264),
        Time = TimeSpan.FromMinutes(1),
    };
}
