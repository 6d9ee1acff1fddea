namespace PlotAgronomy.Tests.Support;

/// <summary>Appends what each published example gives to the file that PLOT_RECORD_EXAMPLES names.</summary>
/// <remarks>
/// Without the variable nothing is kept. A line holds file, example and value, set apart by tabs,
/// in the order in which the tests happen to end.
/// </remarks>
internal static class ExampleRecord
{
    internal const string Variable = "PLOT_RECORD_EXAMPLES";

    private static readonly Lock Gate = new();

    internal static bool IsWanted { get; } = Environment.GetEnvironmentVariable(Variable) is { Length: > 0 };

    internal static void Note(string file, string example, string actual)
    {
        if (IsWanted)
        {
            lock (Gate)
            {
                File.AppendAllText(Environment.GetEnvironmentVariable(Variable)!, $"{file}\t{example}\t{actual}\n");
            }
        }
    }
}
