namespace PlotAgronomy.Map;

/// <summary>Prints maps of the code; a class in its namespace, so that the tests can tell it from the sample's.</summary>
internal static class Program
{
    private static int Main(string[] args) => MapCommands.Run(args, Console.Out, Console.Error);
}
