using System.CommandLine;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>compare</c>: what a plan leaves open, side by side.</summary>
internal static class CompareCommand
{
    internal static Command Create(ConsoleStreams streams) =>
        new("compare", "Lay side by side what a plan leaves open.")
        {
            CompareSystemsCommand.Create(streams),
            CompareLimeCommand.Create(streams),
            CompareLotsCommand.Create(streams),
            CompareBagCommand.Create(streams),
            ComparePlansCommand.Create(streams),
        };

    internal static Argument<string> File() => new("file") { Description = "Plan file." };

    internal static Option<bool> FromMemory(string what) =>
        new("--from-memory")
        {
            Description = $"Ask the {what} too whose numbers were not yet checked against the publication; each is marked.",
        };
}
