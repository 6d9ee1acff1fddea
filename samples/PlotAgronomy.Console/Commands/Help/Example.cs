using System.CommandLine;

namespace PlotAgronomy.Sample.Commands;

/// <summary>One line to type for a command, and what comes of it.</summary>
/// <param name="Line">What is typed behind the program's name.</param>
/// <param name="Gives">What comes of it.</param>
internal sealed record Example(string Line, string Gives)
{
    private const string Calibration =
        """calibrate --rate "8 lb/ac" --swath "15 ft" --caught "0.4 lb" --catch-time "30 s" --pace-time "23 s" """;

    private static readonly Dictionary<string, Example> OfCommands = new()
    {
        [""] = new("plan", "prints the field sheet of the demo."),
        ["start"] = new("start my-plot.json", "asks what lies on the table; stopped, the same line goes on."),
        ["plan"] = new("plan my-plot.json --output my-plot.txt", "writes the sheet to a file for printing."),
        ["check"] = new("check my-plot.json", "names line and field of every mistake; nothing else is done."),
        ["explain"] = new("explain lime.rate my-plot.json", "shows formula, numbers and publication of the rate of lime."),
        ["compare"] = new("compare lime my-plot.json", "lays the lime methods side by side."),
        ["compare systems"] = new(
            "compare systems my-plot.json --crop alfalfa",
            "asks every system that accepts the report what alfalfa needs."
        ),
        ["compare lime"] = new("compare lime my-plot.json --target 6.2", "tells what each method limes to pH 6.2."),
        ["compare lots"] = new("compare lots my-plot.json", "tells which lot of a kind is the cheapest living seed."),
        ["compare bag"] = new("compare bag my-plot.json", "holds the ready blend of the plan against plain seed."),
        ["compare plans"] = new("compare plans my-plot.json other-plot.json", "tells what the second costs and feeds more."),
        ["when"] = new(
            "when my-plot.json --forecast grid.json --zone America/New_York",
            "weighs the days of a forecast that was saved as a file."
        ),
        ["calendar"] = new("calendar my-plot.json --ics season.ics", "prints the season and writes it for a calendar program."),
        ["use-up"] = new("use-up my-plot.json", "tells what the bags at hand will do and which is empty first."),
        ["record"] = new("record my-plot.json rain 0.8 in 2026-09-20", "writes one entry into the plot book beside the plan."),
        ["history"] = new("history my-plot.json", "tells what the plot book knows of this plot."),
        ["review"] = new(
            "review 2026 --from my-plot.json --plan next.json --all",
            "writes the plan of the next year with every change it names."
        ),
        ["property"] = new("property my-plot.json other-plot.json", "buys for both, and lets them share whole bags."),
        ["calibrate"] = new(Calibration.Trim(), "gives gate and pace from a bucket, a scale and a watch."),
        ["completion"] = new("completion bash", "prints what makes the Tab key fill in commands, options and words."),
    };

    /// <summary>The example of a command; every one has one.</summary>
    internal static Example Of(Command command) => OfCommands[PathOf(command)];

    /// <summary>The words that call a command, without the program's name.</summary>
    internal static string PathOf(Command command) =>
        command is RootCommand ? "" : $"{PathOf(command.Parents.OfType<Command>().Single())} {command.Name}".Trim();
}
