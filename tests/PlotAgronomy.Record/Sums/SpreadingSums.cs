using PlotAgronomy.Seeds;
using PlotAgronomy.Spreading;
using UnitsNet;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>Rates, gates, calibration, hoppers and carriers; patterns and passes have their own file.</summary>
internal static class SpreadingSums
{
    private static readonly GateTable Oats = Table("oats", (2, 0.15), (4, 0.62), (6, 1.55), (8, 2.95), (10, 4.70));

    private static readonly PassKind OatSeed = PassKind.FromSeedCount("oats", 16_000, Length.FromMillimeters(4.5),
        PerBushel(32), Inches(1.25));

    private static readonly PassKind CloverSeed = PassKind.FromSeedCount("white clover", 768_000,
        Length.FromMillimeters(1.1), PerBushel(60), Inches(0.25));

    internal static void Record(Recorder recorder)
    {
        PatternSums.Record(recorder);
        PassSums.Record(recorder);
        Rates(recorder);
        Paces(recorder);
        Gates(recorder);
        Courses(recorder);
        Measured(recorder);
        Outcomes(recorder);
        Progress(recorder);
        Hoppers(recorder);
        Carriers(recorder);
    }

    private static GateTable Table(string material, params (double Setting, double Flow)[] points) =>
        GateTable.FromPoints(material, [.. points.Select(p => GatePoint.FromFlow(p.Setting, PoundsPerMinute(p.Flow)))]);

    private static void Rates(Recorder recorder)
    {
        recorder.Call("spreading: rate of a flow", () => SpreaderSetting.FromFlow(PoundsPerMinute(2.1), Mph(3), Feet(15)));
        recorder.Call("spreading: flow for a rate", () => SpreaderSetting.FlowFor(PerAcre(8), Mph(3), Feet(15)));
        recorder.Call("spreading: speed for a rate", () => SpreaderSetting.SpeedFor(PerAcre(8), PoundsPerMinute(0.8), Feet(15)));
        recorder.Call("spreading: a speed beyond walking", () => SpreaderSetting.SpeedFor(PerAcre(8), PoundsPerMinute(6), Feet(15)));
        recorder.Call("spreading: swath for a rate", () => SpreaderSetting.SwathFor(PerAcre(8), PoundsPerMinute(0.8), Mph(3)));
        recorder.Call("spreading: flow for nothing", () => SpreaderSetting.FlowFor(PerAcre(0), Mph(3), Feet(15)));
        foreach (double actual in new[] { 2.0, 3, 4.2 })
        {
            recorder.Call($"spreading: {actual} mph where 3 was planned",
                () => ChangedRate.AtSpeed(PerAcre(8), Mph(3), Mph(actual)));
            recorder.Call($"spreading: passes {actual * 5} ft apart where 15 was planned",
                () => ChangedRate.AtSpacing(PerAcre(8), Feet(15), Feet(actual * 5)));
        }

        recorder.Call("spreading: a dial against the rate",
            () => PrintedDial.Compare(PerAcre(100), ApplicationRate.FromPoundsPerThousandSquareFeet(11)));
        recorder.Call("spreading: outlets alike", () => OutletCheck.For([Grams(100), Grams(105), Grams(95), Grams(100)]));
        recorder.Call("spreading: a worn outlet", () => OutletCheck.For([Grams(100), Grams(118), Grams(94), Grams(100)]));
        foreach (double speed in new[] { 5.0, 12 })
        {
            recorder.Call($"spreading: throw at {speed} mph", () => SpreadPattern.ThrowDistance(Mph(speed), Mph(18), Feet(3)));
        }
    }

    private static void Paces(Recorder recorder)
    {
        recorder.Call("spreading: pace over a course", () => WalkingPace.Over(Feet(100), TimeSpan.FromSeconds(23.5)));
        recorder.Call("spreading: error of a pace",
            () => WalkingPace.ErrorOver(Feet(100), TimeSpan.FromSeconds(23.5), TimeSpan.FromSeconds(0.5)));
        recorder.Call("spreading: time over a course", () => WalkingPace.TimeFor(Feet(435.6), Mph(3)));
        recorder.Call("spreading: area in an hour", () => WalkingPace.AreaRate(Mph(3), Feet(15), Percent(70)));
        recorder.Call("spreading: the walk of a stated area", () => SowingWalk.For(PerAcre(8), Acres(0.62), Feet(15), Mph(3)));
        recorder.Call("spreading: the walk of a stated area, pace unknown",
            () => SowingWalk.For(PerAcre(8), Acres(0.62), Feet(15)));
        recorder.Call("spreading: the walk of a measured plot",
            () => SowingWalk.For(PerAcre(8), PlotArea.FromRectangle(Feet(208.7), Feet(120)), Feet(15), Mph(3)));
    }

    private static void Gates(Recorder recorder)
    {
        recorder.Call("gate table of oats", () => Oats);
        recorder.Call("gate table with runs at odds", () => Table("rye", (1, 0.2), (2, 0.5), (3, 0.48), (4, 1.1), (2, 0.56)));
        recorder.Call("gate table of one point", () => Table("rye", (1, 0.2)));
        foreach (double setting in new[] { 1.0, 2, 3.3, 7, 10, 11 })
        {
            recorder.Call($"gate table of oats: flow at {setting}", () => Oats.FlowAt(setting));
        }

        foreach (double flow in new[] { 0.05, 0.15, 0.4, 2.2, 4.7, 6 })
        {
            recorder.Call($"gate table of oats: setting for {flow} lb/min", () => Oats.SettingFor(PoundsPerMinute(flow)));
        }

        var oats = GrainFlow.For(Length.FromMillimeters(4.5), PerBushel(32));
        var clover = GrainFlow.For(Length.FromMillimeters(1.1), PerBushel(60));
        recorder.Call("grain that flows", () => new[] { oats, clover });
        recorder.Call("gate table moved to a run", () => Oats.ScaledToRun("wheat", 6, PoundsPerMinute(2.4)));
        recorder.Call("gate table moved to a density", () => Oats.ScaledToDensity("wheat", PerBushel(32), PerBushel(60)));
        recorder.Call("gate table moved to another grain", () => Oats.ScaledToGrain("clover", oats, clover));
        foreach (double inches in new[] { 0.05, 0.3, 0.5, 1.25 })
        {
            recorder.Call($"grain through a hole of {inches} in: oats", () => oats.Through(Inches(inches)));
            recorder.Call($"grain through a hole of {inches} in: clover", () => clover.Through(Inches(inches)));
        }

        recorder.Call("hole for a flow of oats", () => oats.HoleFor(PoundsPerMinute(2)));
        recorder.Call("hole for a flow of clover", () => clover.HoleFor(PoundsPerMinute(0.5)));
    }

    private static void Courses(Recorder recorder)
    {
        recorder.Call("course: its area", () => MeasuredRate.CourseAreaOf(Feet(100), Feet(15)));
        recorder.Call("course: its length", () => MeasuredRate.CourseLengthFor(Area.FromSquareFeet(1000), Feet(15)));
        recorder.Call("course: turns of a wheel", () => MeasuredRate.WheelTurnsFor(Feet(100), Feet(1.1)));
        recorder.Call("course: what to expect in the bag",
            () => MeasuredRate.ExpectedCatch(PerAcre(8), Feet(100), Feet(15)));
    }

    private static MeasuringErrors Errors => new()
    {
        Scale = Grams(5),
        Distance = Feet(1),
        Swath = Feet(1.5),
        Time = TimeSpan.FromSeconds(0.5),
        Pace = Mph(0.1),
    };

    private static void Measured(Recorder recorder)
    {
        foreach (var (words, errors) in new (string, MeasuringErrors?)[] { ("", null), (", errors known", Errors) })
        {
            recorder.Call($"calibration by a timed catch{words}",
                () => MeasuredRate.TimedCatch(Pounds(0.4), TimeSpan.FromSeconds(30), Mph(3), Feet(15), errors));
            recorder.Call($"calibration by a weighed run{words}",
                () => MeasuredRate.WeighedRun(Pounds(0.3), Feet(100), Feet(15), errors, TimeSpan.FromSeconds(23)));
            recorder.Call($"calibration by running out{words}",
                () => MeasuredRate.RunOut(Pounds(1), Feet(330), Feet(15), errors, TimeSpan.FromSeconds(75)));
            recorder.Call($"calibration by a tray{words}",
                () => MeasuredRate.TrayCatch(Grams(2), Area.FromSquareFeet(4), errors));
            recorder.Call($"calibration by turns of the wheel{words}",
                () => MeasuredRate.WheelTurns(Pounds(0.4), 20, Feet(5.2), 8, Inches(7), Percent(5), errors));
            recorder.Call($"calibration by a whole plot{words}",
                () => MeasuredRate.WholePlot(Pounds(6), Acres(0.62), errors));
        }

        recorder.Call("calibration: a run without its time",
            () => MeasuredRate.WeighedRun(Pounds(0.3), Feet(100), Feet(15)));
        recorder.Call("calibration: where the error of a catch comes from", () =>
            RateErrorBudget.ForTimedCatch(SpreaderSetting.FlowFor(PerAcre(8), Mph(3), Feet(15)), Errors, Pounds(0.4),
                TimeSpan.FromSeconds(30)));
        recorder.Call("calibration: terms of error alike", () => new[]
        {
            new RateErrorTerm("scale", 1) == new RateErrorTerm("scale", 1),
            new RateErrorTerm("scale", 1) != new RateErrorTerm("time", 1),
        });
        foreach (var (words, pounds) in new[]
        {
            ("agree", new[] { 7.9, 8.0, 8.1 }), ("are off", [9.5, 9.6, 9.4]), ("disagree", [6.5, 8, 9.6]), ("are too few", [8.1]),
        })
        {
            recorder.Call($"calibration: runs that {words}", () => RepeatedRuns.Judge([.. pounds.Select(PerAcre)], PerAcre(8)));
        }
    }

    private static void Outcomes(Recorder recorder)
    {
        MeasuredRate Catch(double pounds) => MeasuredRate.TimedCatch(Pounds(pounds), TimeSpan.FromSeconds(30), Mph(3),
            Feet(15), Errors);
        recorder.Call("calibration outcome of three runs",
            () => CalibrationOutcome.For(PerAcre(8), Feet(15), Mph(3), [Catch(0.36), Catch(0.4), Catch(0.44)]));
        recorder.Call("calibration outcome with a table", () =>
            CalibrationOutcome.For(PerAcre(8), Feet(15), Mph(3), [Catch(0.4)], Table("clover", (2, 1.0), (3, 1.6)), 3));
        recorder.Call("calibration outcome beyond its table", () =>
            CalibrationOutcome.For(PerAcre(8), Feet(15), Mph(3), [Catch(0.4)], Table("clover", (2, 1.0), (3, 1.6)), 4));
        recorder.Call("calibration outcome that asks for a run",
            () => CalibrationOutcome.For(PerAcre(8), Feet(15), Mph(3), [Catch(0.6), Catch(0.62)]));
    }

    private static void Progress(Recorder recorder)
    {
        HopperCheck first = HopperCheck.FromWeighing(Acres(0.25), Pounds(7), settingChanged: true),
            second = HopperCheck.FromWeighing(Acres(0.5), Pounds(5));
        var progress = SowingProgress.After(Pounds(10), Acres(1), [first]);
        recorder.Call("sowing so far, one reading", () => progress);
        recorder.Call("sowing so far, two readings", () => SowingProgress.After(Pounds(10), Acres(1), [first, second]));
        recorder.Call("sowing so far, all gone",
            () => SowingProgress.After(Pounds(10), Acres(1), [HopperCheck.FromWeighing(Acres(0.5), Pounds(0))]));
        recorder.Call("sowing so far: a reading", () => first);
        recorder.Call("sowing so far: a new pace", () => SowingProgress.After(Pounds(10), Acres(1), [second]).NewPace(Mph(3)));
        recorder.Call("sowing so far: a new gate", () => SowingProgress.After(Pounds(10), Acres(1), [second]).NewGate(Oats, 6));
    }

    private static void Hoppers(Recorder recorder)
    {
        recorder.Call("hopper kind", () => OatSeed);
        foreach (var kind in KindCatalog.Standard.Kinds)
        {
            recorder.Call($"kind {kind.Id}: in a hopper", () => PassKind.FromKind(kind));
        }

        recorder.Call("hopper kind of a stated diameter",
            () => PassKind.FromKind(SeedsSums.Kind("crimson"), Length.FromMillimeters(1.6)));
        var kinds = new[] { OatSeed, CloverSeed, PassKind.FromKind(SeedsSums.Kind("austrian winter pea")),
            PassKind.FromKind(SeedsSums.Kind("purple top turnip")), PassKind.FromKind(SeedsSums.Kind("big bluestem")) };
        foreach (var rule in Enum.GetValues<SizeRule>())
        {
            recorder.Call($"size groups by {Words(rule)}", () => Short(SizeGrouping.Arrange(kinds, rule)));
        }

        recorder.Call("size groups in full", () => SizeGrouping.Arrange(kinds[..2]));
        var shares = new[] { HopperShare.FromFlow(OatSeed, Pounds(99), PoundsPerMinute(9), Percent(50)),
            HopperShare.FromFlow(CloverSeed, Pounds(6), PoundsPerMinute(3), Percent(50)) };
        recorder.Call("a share of a hopper", () => shares[0]);
        recorder.Call("a mixed hopper", () => MixedHopper.Bounds(shares, Acres(1), Mph(3), Feet(15)));
        recorder.Call("a mixed hopper, kind by kind", () =>
            MixedHopper.Bounds(shares, Acres(1), Mph(3),
                Feet(15)).Kinds.Select(k => (k.Kind.Name, k.WantedPlantsPerSquareFoot, k.AloneTimesWanted, k.IfMixed,
                    k.IfSifted)));
        recorder.Call("stretches of a stand alike", () => new[]
        {
            new StandStretch(Percent(0), Percent(50), 3) == new StandStretch(Percent(0), Percent(50), 3),
            new StandStretch(Percent(0), Percent(50), 3) != new StandStretch(Percent(0), Percent(50), 4),
        });
        recorder.Call("steps of seeding alike",
            () =>
                new[] { new SeedingStep(SeedingAction.Cover) == new SeedingStep(SeedingAction.Cover),
                    new SeedingStep(SeedingAction.Cover) != new SeedingStep(SeedingAction.Press) });
        recorder.Call("a bucket weighed", () => MeasuredBucket.Weighed(Pounds(11.5)));
        recorder.Call("a bucket by its volume", () => MeasuredBucket.FromVolume(Volume.FromUsGallons(5), PerBushel(60)));
        recorder.Call("buckets of a weight", () => MeasuredBucket.Weighed(Pounds(11.5)).Count(Pounds(40)));
    }

    private static Dictionary<string, object?> Short(SizeGrouping plan) => Named(
        ("groups", plan.Groups.Select(g => (string.Join(", ", g.Kinds.Select(k => k.Name)), g.LargestToSmallest, g.Chaffy,
            g.SownBeforeCovering))),
        ("steps", plan.Steps.Select(s => s.Action)),
        ("Findings", plan.Findings));

    private static void Carriers(Recorder recorder)
    {
        foreach (var carrier in Carrier.All.AddRange(Carrier.Unchecked))
        {
            recorder.Add($"carrier {carrier.Id}", "", Carrier.Find(carrier.Id));
            recorder.Call($"carrier {carrier.Id}: four parts", () => CarrierMix.ForParts(PerAcre(5), 4, carrier));
            recorder.Call($"carrier {carrier.Id}: four parts, densities known",
                () => CarrierMix.ForParts(PerAcre(5), 4, carrier, PerBushel(60), PerBushel(110)));
            recorder.Call($"carrier {carrier.Id}: a steady flow",
                () => CarrierMix.ForSteadyFlow(PerAcre(5), PoundsPerMinute(0.75), Mph(3), Feet(10), carrier));
            recorder.Call($"carrier {carrier.Id}: a flow that is steady already", () =>
                CarrierMix.ForSteadyFlow(PerAcre(25), PoundsPerMinute(0.75), Mph(3), Feet(10), carrier, PerBushel(60),
                    PerBushel(110)));
        }

        recorder.Call("carrier: parts by weight of parts by volume",
            () => CarrierMix.PartsByWeightOf(4, PerBushel(60), PerBushel(110)));
        recorder.Call("carrier for an area",
            () => CarrierMix.ForParts(PerAcre(5), 4, Carrier.Find("dry-sand")).CarrierFor(Acres(0.25)));
        recorder.Call("seed beside a carrier for an area",
            () => CarrierMix.ForParts(PerAcre(5), 4, Carrier.Find("dry-sand")).SeedFor(Acres(0.25)));
    }
}
