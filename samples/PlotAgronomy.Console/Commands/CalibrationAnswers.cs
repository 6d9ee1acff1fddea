using System.Globalization;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Sample.Commands;

/// <summary>What a person measured, read from options first and from answers for what they leave out.</summary>
internal sealed class CalibrationAnswers
{
    internal required string Material { get; init; }

    internal required ApplicationRate Rate { get; init; }

    internal required Length Swath { get; init; }

    internal required CalibrationOutcome Outcome { get; init; }

    internal required Area? Plot { get; init; }

    internal static CalibrationAnswers Collect(Dictionary<string, string> given, Interview interview)
    {
        var sheet = new AnswerSheet(given, interview);
        string material = sheet.Optional(CalibrationQuestion.Material, (string text, out string name, out string problem) =>
        {
            (name, problem) = (text.Trim(), "");
            return true;
        }) ?? "seed";
        var rate = sheet.Required<ApplicationRate>(CalibrationQuestion.Rate, Amounts.TryReadRate);
        var swath = sheet.Required<Length>(CalibrationQuestion.Swath, Amounts.TryReadLength);
        bool catching = IsCatch(sheet);
        var (weights, time, pace, course) = catching ? Catch(sheet) : Run(sheet);
        double? setting = sheet.OptionalValue<double>(CalibrationQuestion.Setting, TryReadSetting);
        var points = sheet.Optional<List<GatePoint>>(CalibrationQuestion.Gate, TryReadGate);
        var errors = Errors(sheet, catching, pace);
        var plot = sheet.OptionalValue<Area>(CalibrationQuestion.Plot, Amounts.TryReadArea);
        var runs = weights.Select(w => catching
            ? SpreaderCalibration.TimedCatch(w, time, pace, swath, errors)
            : SpreaderCalibration.WeighedRun(w, course!.Value, swath, errors, time)).ToList();
        return new CalibrationAnswers
        {
            Material = material,
            Rate = rate,
            Swath = swath,
            Plot = plot,
            Outcome = CalibrationOutcome.Of(rate, swath, pace, runs, points is null ? null : GateTable.Of(material, points), points is null ? null : setting),
        };
    }

    private static MeasuringErrors Errors(AnswerSheet sheet, bool catching, Speed pace)
    {
        var hundredFeet = Length.FromFeet(100);
        return new MeasuringErrors
        {
            Scale = sheet.OptionalValue<Mass>(CalibrationQuestion.ScaleError, Amounts.TryReadMass) ?? default,
            Time = catching ? sheet.OptionalValue<TimeSpan>(CalibrationQuestion.TimeError, Amounts.TryReadDuration) ?? default : default,
            Distance = catching ? default : sheet.OptionalValue<Length>(CalibrationQuestion.CourseError, Amounts.TryReadLength) ?? default,
            Pace = sheet.OptionalValue<TimeSpan>(CalibrationQuestion.PaceError, Amounts.TryReadDuration) is { } varies
                ? WalkingPace.ErrorOver(hundredFeet, WalkingPace.TimeFor(hundredFeet, pace), varies)
                : default,
            Swath = sheet.OptionalValue<Length>(CalibrationQuestion.SwathError, Amounts.TryReadLength) ?? default,
        };
    }

    private static bool IsCatch(AnswerSheet sheet)
    {
        if (sheet.Has(CalibrationQuestion.Used) && sheet.Has(CalibrationQuestion.Caught))
        {
            throw new BadAnswerException("Give either the weight used on a course (--used) or the weight caught in a bucket (--caught), not both.");
        }

        return !sheet.Has(CalibrationQuestion.Used) && (sheet.Has(CalibrationQuestion.Caught) || sheet.Required<bool>(CalibrationQuestion.Way, TryReadWay));
    }

    private static (List<Mass> Weights, TimeSpan Time, Speed Pace, Length? Course) Run(AnswerSheet sheet)
    {
        var course = sheet.Required<Length>(CalibrationQuestion.Course, Amounts.TryReadLength);
        var time = sheet.Required<TimeSpan>(CalibrationQuestion.CourseTime, Amounts.TryReadDuration);
        var weights = sheet.Required<List<Mass>>(CalibrationQuestion.Used, TryReadWeights);
        return (weights, time, WalkingPace.Over(course, time), course);
    }

    private static (List<Mass> Weights, TimeSpan Time, Speed Pace, Length? Course) Catch(AnswerSheet sheet)
    {
        var time = sheet.Required<TimeSpan>(CalibrationQuestion.CatchTime, Amounts.TryReadDuration);
        var weights = sheet.Required<List<Mass>>(CalibrationQuestion.Caught, TryReadWeights);
        var paceTime = sheet.Required<TimeSpan>(CalibrationQuestion.PaceTime, Amounts.TryReadDuration);
        return (weights, time, WalkingPace.Over(Length.FromFeet(100), paceTime), null);
    }

    private static bool TryReadWay(string text, out bool catching, out string problem)
    {
        string word = text.Trim();
        catching = word.Equals("catch", StringComparison.OrdinalIgnoreCase);
        problem = $"expected 'run' or 'catch', found '{word}'";
        return catching || word.Equals("run", StringComparison.OrdinalIgnoreCase);
    }

    private static bool TryReadWeights(string text, out List<Mass> weights, out string problem)
    {
        weights = [];
        problem = "";
        foreach (string part in text.Split(';'))
        {
            if (!Amounts.TryReadMass(part, out var weight, out problem))
            {
                return false;
            }

            weights.Add(weight);
        }

        return true;
    }

    private static bool TryReadGate(string text, out List<GatePoint> points, out string problem)
    {
        points = [];
        problem = "";
        foreach (string part in text.Split(';'))
        {
            string[] sides = part.Split('=');
            if (sides.Length != 2)
            {
                problem = $"expected a setting and its flow such as '4=0.62 lb/min', found '{part.Trim()}'";
                return false;
            }

            if (!TryReadSetting(sides[0], out double setting, out problem) || !Amounts.TryReadFlow(sides[1], out var flow, out problem))
            {
                return false;
            }

            points.Add(GatePoint.Of(setting, flow));
        }

        return true;
    }

    private static bool TryReadSetting(string text, out double setting, out string problem)
    {
        problem = $"expected a number of your gate scale, found '{text.Trim()}'";
        return double.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out setting) && double.IsFinite(setting);
    }
}
