namespace PlotAgronomy.Sample;

/// <summary>Exit codes, documented in the README.</summary>
public static class ExitCode
{
    /// <summary>All went well.</summary>
    public const int Done = 0;

    /// <summary>The command line was wrong, or a file could not be read or written.</summary>
    public const int Usage = 1;

    /// <summary>The input holds mistakes; each is one line on stderr.</summary>
    public const int BadInput = 2;
}
