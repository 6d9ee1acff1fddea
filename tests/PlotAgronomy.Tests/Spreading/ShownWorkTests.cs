using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

/// <summary>Every result of the room lays out its sum as a person would write it, with sources that exist, in any country.</summary>
public class ShownWorkTests
{
    private static readonly ApplicationRate Eight = ApplicationRate.FromPoundsPerAcre(8);
    private static readonly Speed Walk = Speed.FromMilesPerHour(3);
    private static readonly Length Swath = Length.FromFeet(15);

    public static TheoryData<string, string> Lines =>
        new()
        {
            { "run", "Rate = weight x 43,560 / (swath x distance) = 0.5 x 43,560 / (15 x 200) = 7.26 lb/ac [SPREAD-S3]" },
            { "catch", "Flow = weight x 60 / seconds = 0.4 x 60 / 30 = 0.8 lb/min" },
            { "trays", "Rate = weight x 43,560 / tray area = 0.01 x 43,560 / 9 = 48.4 lb/ac [DEF-UNITS]" },
            { "turns", "Ground = rows x spacing x circumference x turns = 10 x 0.5 x 8 x 20 = 800 ft2 [SPREAD-S1]" },
            { "spacing", "Rate = rate x swath of the calibration / spacing of the passes = 8 x 15 / 12 = 10 lb/ac" },
            { "walk", "Distance = area / swath = 10,890 / 15 = 726 ft" },
            { "progress", "Rate needed = weight left / ground left = 7 / 0.75 = 9.333 lb/ac" },
            { "carrier", "Parts by weight = carrier rate / seed rate = 24 / 8 = 3" },
            { "repeats", "Off target = mean / target - 1 = 8 / 8 - 1 = 0 % [SPREAD-S14]" },
            { "outlets", "Outlet 1 = catch / mean - 1 = 0.2094 / 0.2205 - 1 = -5 % [SPREAD-S5]" },
            { "dial", "Claimed to wanted = claimed rate / wanted rate = 16 / 8 = 2 [SPREAD-S4]" },
            { "hopper", "Walk = area / swath / (speed x 88) = 43,560 / 15 / (3 x 88) = 11 min" },
            { "groups", "Pass 1, pea, rye = largest diameter / smallest diameter = 3.84 / 3.05 = 1.26 [PRACTICE]" },
            { "swath", "Half throw = whole throw / 2 = 24 / 2 = 12 ft [SPREAD-S19]" },
            { "half", "Right angles = CV of the full rate / square root of 2 = 25.34 / 1.414 = 17.92 % [SPREAD-S16]" },
            { "overlap", "Mean = sum of overlapped amounts / positions = 288 / 18 = 16" },
            { "gate", "Gate = monotone cubic through the measured points = oats: setting 4 gives 0.62 lb/min [SPREAD-S37]" },
            { "outcome", "Expected error = pow(sum of squares, 0.5) = pow(0, 0.5) = 0 %" },
            { "hopper", "oats, to flow out alone = weight / flow alone = 99 / 9 = 11 min" },
            {
                "overlap",
                "Thinnest place, from the path of pass -1 = side x (place - pass x swath) = 1 x (-12 - -1 x 18) = 6 ft, which gets 12"
            },
            { "swath", "Lean, right of the path = sum of place x catch / sum of catches = 0 / 288 = 0 ft" },
        };

    [Theory, MemberData(nameof(Lines))]
    public void The_sum_reads_as_on_paper(string result, string line)
    {
        // Every expected line is hand arithmetic on round inputs.
        foreach (string culture in new[] { "en-US", "de-DE", "tr-TR" })
        {
            using var scope = new CultureScope(culture);
            var worked = Result(result);
            Assert.Contains(line, worked.ShowWork().Select(l => l.ToString()));
            Assert.NotEmpty(worked.Sources);
            Assert.All(worked.Sources.Concat(worked.Findings.Select(f => f.Source)), source =>
                Assert.Contains(source, Source.All)
            );
        }
    }

    private static IWorkedResult Result(string name)
    {
        var caught = MeasuredRate.TimedCatch(Mass.FromPounds(0.4), TimeSpan.FromSeconds(30), Walk, Swath);
        var triangle = PatternWorkedExamples.SinglePass("SYN-TRI");
        return name switch
        {
            "run" => MeasuredRate.WeighedRun(Mass.FromPounds(0.5), Length.FromFeet(200), Swath),
            "catch" => caught,
            "trays" => MeasuredRate.TrayCatch(Mass.FromPounds(0.01), Area.FromSquareFeet(9)),
            "turns" => MeasuredRate.WheelTurns(Mass.FromPounds(1), 20, Length.FromFeet(8), 10, Length.FromInches(6)),
            "spacing" => ChangedRate.AtSpacing(Eight, Swath, Length.FromFeet(12)),
            "walk" => SowingWalk.For(Eight, Area.FromAcres(0.25), Swath),
            "progress" => SowingProgress.After(
                Mass.FromPounds(10),
                Area.FromAcres(1),
                [HopperCheck.FromWeighing(Area.FromAcres(0.25), Mass.FromPounds(7))]
            ),
            "carrier" => CarrierMix.ForParts(Eight, 3, Carrier.DrySand),
            "repeats" => RepeatedRuns.Judge([Eight, Eight, Eight], Eight),
            "outlets" => OutletCheck.For([Mass.FromGrams(95), Mass.FromGrams(105)]),
            "dial" => PrintedDial.Compare(Eight, ApplicationRate.FromPoundsPerAcre(16)),
            "hopper" => MixedHopper.Bounds(
                [Share("oats", 16_000, 99, 9), Share("clover", 768_000, 6, 3)],
                Area.FromAcres(1),
                Walk,
                Swath
            ),
            "groups" => SizeGrouping.Arrange([PassKind.FromSeedCount("rye", 16_000), PassKind.FromSeedCount("pea", 8000)]),
            "swath" => SwathAdvice.For(triangle, DrivingMethod.OneDirection),
            "half" => HalfRateComparison.For(triangle, Length.FromFeet(18), DrivingMethod.OneDirection),
            "overlap" => OverlappedPattern.For(triangle, Length.FromFeet(18), DrivingMethod.OneDirection),
            "gate" => GateTableTests.Table("oats", (2, 0.15), (4, 0.62), (6, 1.55)).FlowAt(4),
            _ => CalibrationOutcome.For(Eight, Swath, Walk, [caught]),
        };
    }

    private static HopperShare Share(string name, double seedsPerPound, double pounds, double poundsPerMinute) =>
        HopperShare.FromFlow(
            PassKind.FromSeedCount(name, seedsPerPound),
            Mass.FromPounds(pounds),
            MassFlow.FromPoundsPerMinute(poundsPerMinute),
            Fraction.FromPercent(50)
        );
}
