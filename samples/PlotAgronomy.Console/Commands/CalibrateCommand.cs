using System.CommandLine;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>calibrate</c>: from a bucket, a scale, a stopwatch and a tape to a gate, a pace and how sure they are.</summary>
public static class CalibrateCommand
{
    /// <summary>Exit code when what was given cannot be read or contradicts itself.</summary>
    public const int BadInput = 2;

    /// <summary>Makes the command. What the options leave out is asked for; without any option, everything is.</summary>
    /// <param name="streams">Where answers are read, and questions, the result and what is wrong are written.</param>
    /// <returns>The command.</returns>
    internal static Command Create(ConsoleStreams streams)
    {
        var command = new Command(
            "calibrate",
            "Find gate, pace and expected error of a spreader from a weighed run or a timed catch. Amounts carry their units: "
                + "'8 lb/ac', '15 ft', '0.4 lb', '30 s'."
        );
        var options = CalibrationQuestion.All.ToDictionary(
            question => question,
            question => new Option<string[]>($"--{question.Name}")
            {
                Description = question.Help,
                AllowMultipleArgumentsPerToken = false,
            }
        );
        options[CalibrationQuestion.Way].CompletionSources.Add("run", "catch");
        foreach (var option in options.Values)
        {
            command.Options.Add(option);
        }

        command.SetAction(parsed =>
        {
            try
            {
                var given = options
                    .Where(o => parsed.GetResult(o.Value) is not null)
                    .ToDictionary(o => o.Key.Name, o => Joined(o.Key, parsed.GetValue(o.Value) ?? []));
                var measured = CalibrationAnswers.Collect(given, new Interview(streams.In, streams.Out));
                CalibrationReport.Write(streams.Out, measured);
                return 0;
            }
            catch (BadAnswerException problem)
            {
                streams.Error.WriteLine(problem.Message);
                return BadInput;
            }
            catch (ArgumentException problem)
            {
                streams.Error.WriteLine(
                    $"{problem.ParamName}: {problem.Message.Split([" (Parameter ", "\n"], StringSplitOptions.None)[0]}"
                );
                return BadInput;
            }
        });
        return command;
    }

    private static string Joined(CalibrationQuestion question, string[] values) =>
        question.Many || values.Length == 1
            ? string.Join(';', values)
            : throw new BadAnswerException($"--{question.Name} is given {values.Length} times; give it once.");
}
