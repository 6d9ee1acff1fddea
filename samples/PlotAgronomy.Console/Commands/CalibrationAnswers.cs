using System.Globalization;
using System.Text.RegularExpressions;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Sample.Commands;

/// <summary>What a person measured, read from options first and from answers for what they leave out.</summary>
internal sealed partial class CalibrationAnswers
{
    internal required string Material { get; init; }

    internal required ApplicationRate Rate { get; init; }

    internal required Length Swath { get; init; }

    internal required CalibrationOutcome Outcome { get; init; }

    internal required Area? Plot { get; init; }

    /// <summary>Gets the gate setting of the runs, when it is known.</summary>
    internal required double? Setting { get; init; }

    /// <summary>Gets the course or the time over which the weights left the hopper, as text.</summary>
    internal required string MeasuredOver { get; init; }

    internal static CalibrationAnswers Collect(Dictionary<string, string> given, Interview interview)
    {
        var sheet = new AnswerSheet(given, interview);
        sheet.Open();
        string material = sheet.Optional(CalibrationQuestion.Material, (string text, out string name, out string problem) =>
        {
            (name, problem) = (text.Trim(), "");
            return true;
        }) ?? "seed";
        var rate = sheet.Required(
            CalibrationQuestion.Rate,
            AboveZero<ApplicationRate>(Amounts.TryReadRate, r => r.PoundsPerAcre)
        );
        var swath = sheet.Required(CalibrationQuestion.Swath, AboveZero<Length>(Amounts.TryReadLength, l => l.Feet));
        bool catching = IsCatch(sheet);
        var (weights, time, pace, course) = catching ? Catch(sheet) : Run(sheet);
        var flow = MassFlow.FromPoundsPerMinute(weights.Average(w => w.Pounds) / time.TotalMinutes);
        double? setting = sheet.OptionalValue<double>(CalibrationQuestion.Setting, TryReadSetting);
        var gate = sheet.Optional(CalibrationQuestion.Gate, GateReader(material, setting, flow));
        var errors = Errors(sheet, catching, pace);
        var plot = sheet.OptionalValue(CalibrationQuestion.Plot, AboveZero<Area>(Amounts.TryReadArea, a => a.Acres));
        sheet.Close();
        var runs = weights
            .Select(w =>
                catching
                    ? MeasuredRate.TimedCatch(w, time, pace, swath, errors)
                    : MeasuredRate.WeighedRun(w, course!.Value, swath, errors, time)
            )
            .ToList();
        return new CalibrationAnswers
        {
            Material = material,
            Rate = rate,
            Swath = swath,
            Plot = plot,
            Setting = setting,
            MeasuredOver = course is { } taped ? Amounts.Print(taped, "ft", 1) : Amounts.Print(time, "s", 1),
            Outcome = CalibrationOutcome.For(rate, swath, pace, runs, gate, gate is null ? null : setting),
        };
    }

    private static MeasuringErrors Errors(AnswerSheet sheet, bool catching, Speed pace)
    {
        var hundredFeet = Length.FromFeet(100);
        return new MeasuringErrors
        {
            Scale = sheet.OptionalValue<Mass>(CalibrationQuestion.ScaleError, Amounts.TryReadMass) ?? default,
            Time = catching
                ? sheet.OptionalValue<TimeSpan>(CalibrationQuestion.TimeError, Amounts.TryReadDuration) ?? default
                : default,
            Distance = catching
                ? default
                : sheet.OptionalValue<Length>(CalibrationQuestion.CourseError, Amounts.TryReadLength) ?? default,
            Pace = sheet.OptionalValue<TimeSpan>(CalibrationQuestion.PaceError, Amounts.TryReadDuration) is { } varies
                ? WalkingPace.ErrorOver(hundredFeet, WalkingPace.TimeFor(hundredFeet, pace), varies)
                : default,
            Swath = sheet.OptionalValue<Length>(CalibrationQuestion.SwathError, Amounts.TryReadLength) ?? default,
        };
    }

    private static bool IsCatch(AnswerSheet sheet)
    {
        bool used = sheet.Has(CalibrationQuestion.Used),
            caught = sheet.Has(CalibrationQuestion.Caught);
        if (used && caught)
        {
            throw new BadAnswerException(
                "Give either the weight used on a course (--used) or the weight caught in a bucket (--caught), not both."
            );
        }

        bool catching =
            sheet.Has(CalibrationQuestion.Way) || !(used || caught)
                ? sheet.Required<bool>(CalibrationQuestion.Way, TryReadWay)
                : caught;
        CalibrationQuestion[] strange = catching
            ?
            [
                CalibrationQuestion.Used,
                CalibrationQuestion.Course,
                CalibrationQuestion.CourseTime,
                CalibrationQuestion.CourseError,
            ]
            :
            [
                CalibrationQuestion.Caught,
                CalibrationQuestion.CatchTime,
                CalibrationQuestion.PaceTime,
                CalibrationQuestion.TimeError,
            ];
        var (asked, other) = catching ? ("a timed catch", "a weighed run") : ("a weighed run", "a timed catch");
        return strange.FirstOrDefault(sheet.Has) is { } question
            ? throw new BadAnswerException($"--{question.Name} belongs to {other}, and this is {asked}: leave it out.")
            : catching;
    }

    private static (List<Mass> Weights, TimeSpan Time, Speed Pace, Length? Course) Run(AnswerSheet sheet)
    {
        var course = sheet.Required(CalibrationQuestion.Course, AboveZero<Length>(Amounts.TryReadLength, l => l.Feet));
        var time = sheet.Required(
            CalibrationQuestion.CourseTime,
            AboveZero<TimeSpan>(Amounts.TryReadDuration, t => t.TotalSeconds)
        );
        var weights = sheet.Required<List<Mass>>(CalibrationQuestion.Used, TryReadWeights);
        return (weights, time, WalkingPace.Over(course, time), course);
    }

    private static (List<Mass> Weights, TimeSpan Time, Speed Pace, Length? Course) Catch(AnswerSheet sheet)
    {
        var time = sheet.Required(
            CalibrationQuestion.CatchTime,
            AboveZero<TimeSpan>(Amounts.TryReadDuration, t => t.TotalSeconds)
        );
        var weights = sheet.Required<List<Mass>>(CalibrationQuestion.Caught, TryReadWeights);
        var paceTime = sheet.Required(
            CalibrationQuestion.PaceTime,
            AboveZero<TimeSpan>(Amounts.TryReadDuration, t => t.TotalSeconds)
        );
        return (weights, time, WalkingPace.Over(Length.FromFeet(100), paceTime), null);
    }

    private static bool TryReadWay(string text, out bool catching, out string problem)
    {
        string word = text.Trim().ToLowerInvariant();
        catching = word is "catch" or "bucket";
        problem = $"expected 'run' or 'catch', found '{word}'";
        return catching || word is "run" or "course";
    }

    private static bool TryReadWeights(string text, out List<Mass> weights, out string problem)
    {
        weights = [];
        problem = "";
        foreach (string part in Parts(text))
        {
            if (!AboveZero<Mass>(Amounts.TryReadMass, m => m.Pounds)(part, out var weight, out problem))
            {
                return false;
            }

            weights.Add(weight);
        }

        return true;
    }

    /// <summary>Reads a gate table. What the runs themselves gave is a point of it when their setting lies outside the
    /// others.</summary>
    private static Interview.Reader<GateTable> GateReader(string material, double? setting, MassFlow flow) =>
        (string text, out GateTable table, out string problem) =>
        {
            table = null!;
            if (!TryReadGatePoints(text, out var points, out problem))
            {
                return false;
            }

            if (setting is { } own && (own < points.Min(p => p.Setting) || own > points.Max(p => p.Setting)))
            {
                points.Add(GatePoint.FromFlow(own, flow));
            }

            try
            {
                table = GateTable.FromPoints(material, points);
                return true;
            }
            catch (ArgumentException contradiction)
            {
                problem = contradiction.Message.Split(" (Parameter ")[0];
                return false;
            }
        };

    private static bool TryReadGatePoints(string text, out List<GatePoint> points, out string problem)
    {
        points = [];
        problem = "";
        foreach (string part in Parts(text))
        {
            string[] sides = part.Split('=');
            if (sides.Length != 2)
            {
                problem = $"expected a setting and its flow such as '4=0.62 lb/min', found '{part.Trim()}'";
                return false;
            }

            if (
                !TryReadSetting(sides[0], out double setting, out problem)
                || !Amounts.TryReadFlow(sides[1], out var flow, out problem)
            )
            {
                return false;
            }

            points.Add(GatePoint.FromFlow(setting, flow));
        }

        return true;
    }

    /// <summary>Several answers in one: parted by a semicolon, or by a comma that is not inside a number. One blank part when
    /// there is nothing.</summary>
    private static string[] Parts(string text)
    {
        string[] parts = [.. Separator().Split(text).Where(p => !string.IsNullOrWhiteSpace(p))];
        return parts.Length > 0 ? parts : [""];
    }

    [GeneratedRegex(@";|,(?!\d)|(?<=[A-Za-z]),")]
    private static partial Regex Separator();

    private static Interview.Reader<T> AboveZero<T>(Interview.Reader<T> read, Func<T, double> number) =>
        (string text, out T value, out string problem) =>
        {
            if (!read(text, out value, out problem))
            {
                return false;
            }

            problem = $"'{text.Trim()}' is not above 0";
            return number(value) > 0;
        };

    private static bool TryReadSetting(string text, out double setting, out string problem)
    {
        problem = $"expected a number of your gate scale, found '{text.Trim()}'";
        return double.TryParse(
                text.Trim(),
                NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
                CultureInfo.InvariantCulture,
                out setting
            ) && double.IsFinite(setting);
    }
}
