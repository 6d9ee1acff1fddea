using PlotAgronomy.Spreading;
using Spectre.Console;
using UnitsNet;

namespace PlotAgronomy.Sample.Commands;

/// <summary>Prints what a calibration leads to, in plain rows.</summary>
internal static class CalibrationReport
{
    private const int Width = 100;

    internal static void Write(TextWriter writer, CalibrationAnswers answers)
    {
        using var page = new StringWriter();
        Draw(page, answers, answers.Outcome);
        foreach (string line in page.ToString().ReplaceLineEndings("\n").TrimEnd().Split('\n'))
        {
            writer.WriteLine(line.TrimEnd());
        }
    }

    private static void Draw(TextWriter writer, CalibrationAnswers answers, CalibrationOutcome outcome)
    {
        var console = AnsiConsole.Create(
            new AnsiConsoleSettings
            {
                Ansi = AnsiSupport.No,
                ColorSystem = ColorSystemSupport.NoColors,
                Interactive = InteractionSupport.No,
                Out = new AnsiConsoleOutput(writer),
            }
        );
        console.Profile.Width = Width;
        console.WriteLine(
            $"{answers.Material}: {Amounts.Print(answers.Rate, "lb/ac", 2)} wanted, passes "
                + $"{Amounts.Print(answers.Swath, "ft", 1)} apart"
        );
        console.Write(Rows(answers, outcome));
        console.WriteLine();
        foreach (var finding in outcome.Findings)
        {
            console.WriteLine(finding.ToString());
        }
    }

    private static Grid Rows(CalibrationAnswers answers, CalibrationOutcome outcome)
    {
        var grid = new Grid()
            .AddColumn(new GridColumn { NoWrap = true, Padding = new Padding(2, 0, 2, 0) })
            .AddColumn(new GridColumn { Padding = new Padding(0) });
        void Row(string label, string text) => grid.AddRow(new Text(label), new Text(text));

        Row(
            "measured",
            $"{Amounts.Print(outcome.Runs.Mean, "lb/ac", 2)}, {Count(outcome)}; "
                + $"{Amounts.Print(outcome.Measured.Flow, "lb/min", 3)}"
        );
        Row("verdict", Verdict(outcome.Runs));
        Row("gate", Gate(outcome));
        Row("aim for", $"{Weight(outcome.WeightWanted)} in {answers.MeasuredOver}, where {Weight(outcome.MeanWeight)} came out");
        Row("walking speed", $"{Pace(outcome.Measured)} as measured");
        string where = answers.Setting is { } setting ? $"at {Amounts.Print(setting, 2)}" : "as it stood";
        Row("or instead", $"{Pace(outcome.AtThisGate)} with the gate left {where}");
        Row("expected error", Error(outcome));
        if (answers.Plot is { } plot)
        {
            var walk = SowingWalk.For(answers.Rate, plot, answers.Swath, outcome.Measured.Speed);
            Row(
                "plot",
                $"{Amounts.Print(plot, "ac", 3)}: load {Amounts.Print(walk.Load, "lb", 2)}, walk "
                    + $"{Amounts.Print(walk.Distance, "ft", 0)} in {Amounts.Print(walk.Time!.Value, "min", 1)} without turns"
            );
        }

        return grid;
    }

    private static string Count(CalibrationOutcome outcome) =>
        outcome.Runs.Runs.Length == 1
            ? "one run"
            : $"mean of {outcome.Runs.Runs.Length} runs that spread over {Amounts.Print(outcome.Runs.SpreadPercent, 1)} %";

    private static string Verdict(RepeatedRuns runs) =>
        runs.Verdict switch
        {
            RepeatVerdict.TooFewRuns => $"not enough runs to judge; so far {Off(runs)}",
            RepeatVerdict.RunsDisagree => $"the runs disagree; their mean is {Off(runs)}",
            RepeatVerdict.OffTarget => $"the runs agree, but are {Off(runs)}",
            _ => $"accepted: the runs agree and are {Off(runs)}",
        };

    private static string Off(RepeatedRuns runs)
    {
        string side = runs.OffTargetPercent < 0 ? "below" : "above";
        return $"{Amounts.Print(Math.Abs(runs.OffTargetPercent), 1)} % {side} the rate wanted";
    }

    private static string Weight(Mass weight) =>
        $"{Amounts.Print(weight, "lb", 3)} ({Amounts.Print(weight, "oz", 2)}, {Amounts.Print(weight, "g", 0)})";

    private static string Gate(CalibrationOutcome outcome)
    {
        string needed = $"{Amounts.Print(outcome.AtThisPace.Flow, "lb/min", 3)} is needed at this pace";
        return outcome.Gate switch
        {
            null when outcome.Runs.Verdict == RepeatVerdict.Accepted =>
                $"leave it as it stands; {needed}, {Amounts.Print(outcome.Measured.Flow, "lb/min", 3)} comes out",
            null => $"{needed}, {Amounts.Print(outcome.Runs.FlowFactor, 2)} times the flow measured; measure at a second setting "
                + "too to get a number",
            { Setting: { } setting } => $"{Amounts.Print(setting, 2)}; {needed}",
            _ => $"no setting: {needed}",
        };
    }

    private static string Pace(SpreaderSetting setting) =>
        $"{Amounts.Print(setting.TimePer100Feet, "s", 1)} per 100 ft ({Amounts.Print(setting.Speed, "mph", 2)})";

    private static string Error(CalibrationOutcome outcome)
    {
        string percent = $"+-{Amounts.Print(outcome.ExpectedErrorPercent, 1)} % of the rate";
        string range =
            $"{Amounts.Print(outcome.ExpectedLow, "lb/ac", 1)} to {Amounts.Print(outcome.ExpectedHigh, "lb/ac", 1)} once gate "
            + "or pace is changed";
        return outcome.MeasuringError.Largest is { } term
                ? $"{percent}, the largest measuring error being the {term.Measurement}: {range}"
            : outcome.Runs.SampleCvPercent is null ? "not known: one run, and no measuring error was given"
            : $"{percent} from the scatter of the runs alone, no measuring error was given: {range}";
    }
}
