namespace PlotAgronomy.Sample;

/// <summary>Entry of the sample console.</summary>
public static class Program
{
    /// <summary>Runs one command.</summary>
    /// <param name="args">Command line.</param>
    /// <returns>Exit code.</returns>
    public static int Main(string[] args) => args.Length == 0 ? 0 : 2;
}
