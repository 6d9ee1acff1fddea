using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

public class CalibrationWorkedExamples
{
    private const string Worked = "Spreading/worked-calibration.csv";

    public static TheoryData<string> Ids => WorkedExamples.Ids(Worked);

    [Theory, MemberData(nameof(Ids))]
    public void Matches_the_published_answer(string id)
    {
        var row = WorkedExamples.Find(Worked, id);
        var x = new WorkedInputs(row);
        double actual = row.Text("topic") switch
        {
            "width-ft" => x["rows"] * Length.FromInches(x["row_in"]).Feet,
            "turns-ft2" => Turns(x, Mass.FromPounds(1)).Covered!.Value.SquareFeet,
            "turns-ac" => Turns(x, Mass.FromPounds(1)).Covered!.Value.Acres,
            "turns-rate" => Turns(x, Mass.FromOunces(x["oz"])).Rate.PoundsPerAcre,
            "turns-count" => MeasuredRate.WheelTurnsFor(Length.FromFeet(x["course_ft"]), Length.FromFeet(x["wheel_diameter_ft"])),
            "turns-kg-ha" => MeasuredRate.WheelTurns(Mass.FromKilograms(x["kg"]), x["turns"], Length.FromMeters(Math.PI * x["wheel_diameter_m"]), 1, Length.FromMeters(x["width_m"])).Rate.KilogramsPerHectare,
            "expected-g" => Expected(x, ApplicationRate.FromPoundsPerAcre(x["rate"])).Grams,
            "expected-oz" => Expected(x, ApplicationRate.FromPoundsPerAcre(x["rate"])).Ounces,
            "expected-lb" => Expected(x, ApplicationRate.FromPoundsPerThousandSquareFeet(x["rate_per_1000"])).Pounds,
            "course-ft" => Course(x).Feet,
            "course-in" => Course(x).Inches,
            "course-m" => MeasuredRate.CourseLengthFor(Area.FromSquareMeters(x["area_m2"]), Length.FromMeters(x["width_m"])).Meters,
            "run-rate" => MeasuredRate.WeighedRun(Mass.FromOunces(x["oz"]), Length.FromFeet(x["course_ft"]), Length.FromFeet(x["swath_ft"])).Rate.PoundsPerAcre,
            "run-per-1000" => MeasuredRate.WeighedRun(Mass.FromPounds(x["lb"]), Length.FromFeet(x["course_ft"]), Length.FromFeet(x["swath_ft"])).Rate.PoundsPerThousandSquareFeet,
            "tray-ton" => MeasuredRate.TrayCatch(Mass.FromPounds(x["lb"]), Area.FromSquareInches(x["side_in"] * x["side_in"])).Rate.ShortTonsPerAcre,
            "tray-lb" => MeasuredRate.TrayCatch(Mass.FromPounds(x["lb"]), Area.FromSquareFeet(x["area_ft2"])).Rate.PoundsPerAcre,
            "tray-g" => MeasuredRate.TrayCatch(Mass.FromGrams(x["g"]), Area.FromSquareFeet(x["area_ft2"])).Rate.PoundsPerAcre,
            "tray-g-metric" => MeasuredRate.TrayCatch(Mass.FromGrams(x["g"]), Area.FromSquareMeters(x["area_m2"])).Rate.KilogramsPerHectare,
            "verdict-low" => Limit(x["target"], 0.5, 1),
            "verdict-high" => Limit(x["target"], 1.5, 1),
            "pace-s" => WalkingPace.TimeFor(Length.FromFeet(x["feet"]), Speed.FromMilesPerHour(x["mph"])).TotalSeconds,
            "capacity" => WalkingPace.AreaRate(Speed.FromMilesPerHour(x["mph"]), Length.FromFeet(x["width_ft"]), Fraction.FromValue(x["efficiency"])).Acres,
            "flow" => SpreaderSetting.FlowFor(ApplicationRate.FromPoundsPerAcre(x["rate"]), Speed.FromMilesPerHour(x["mph"]), Length.FromFeet(x["swath_ft"])).Flow.PoundsPerMinute,
            "metric-rate" => SpreaderSetting.FromFlow(MassFlow.FromKilogramsPerMinute(x["kg_min"]), Speed.FromKilometersPerHour(x["km_h"]), Length.FromMeters(x["swath_m"])).Rate.KilogramsPerHectare,
            "error-pct" => MeasuredRate.TimedCatch(Mass.FromGrams(x["g"]), TimeSpan.FromSeconds(x["s"]), Speed.FromMilesPerHour(3), Length.FromFeet(10), new() { Scale = Mass.FromGrams(x["g_error"]), Time = TimeSpan.FromSeconds(x["s_error"]) }).Error.CombinedPercent,
            "slow-walk-pct" => ChangedRate.AtSpeed(ApplicationRate.FromPoundsPerAcre(10), Speed.FromMilesPerHour(x["mph"]), Speed.FromMilesPerHour(x["real_mph"])).ChangePercent,
            "respaced-pct" => ChangedRate.AtSpacing(ApplicationRate.FromPoundsPerAcre(10), Length.FromFeet(x["swath_ft"]), Length.FromFeet(x["spacing_ft"])).ChangePercent,
            _ => throw new InvalidOperationException($"unknown topic {row.Text("topic")}"),
        };
        WorkedExamples.AssertMatches(row, actual);
    }

    private static MeasuredRate Turns(WorkedInputs x, Mass caught) => MeasuredRate.WheelTurns(
        caught, x["turns"], Length.FromFeet(x["circumference_ft"]), (int)x["rows"], Length.FromInches(x["row_in"]));

    private static Mass Expected(WorkedInputs x, ApplicationRate rate) =>
        MeasuredRate.ExpectedCatch(rate, Length.FromFeet(x["course_ft"]), Length.FromFeet(x["width_ft"]));

    private static Length Course(WorkedInputs x) => MeasuredRate.CourseLengthFor(Area.FromSquareFeet(x["area_ft2"]), Length.FromFeet(x["width_ft"]));

    /// <summary>Bisects for the mean at which the verdict on three equal runs turns from off target to accepted.</summary>
    private static double Limit(double target, double rejected, double accepted)
    {
        for (int i = 0; i < 60; i++)
        {
            double middle = (rejected + accepted) / 2;
            var rate = ApplicationRate.FromPoundsPerThousandSquareFeet(target * middle);
            bool good = RepeatedRuns.Judge([rate, rate, rate], ApplicationRate.FromPoundsPerThousandSquareFeet(target)).Verdict == RepeatVerdict.Accepted;
            (rejected, accepted) = good ? (rejected, middle) : (middle, accepted);
        }

        return target * accepted;
    }
}
