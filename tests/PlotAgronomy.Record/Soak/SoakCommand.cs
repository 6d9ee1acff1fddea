using System.Globalization;

namespace PlotAgronomy.Record.Soak;

/// <summary>`soak PLANS`: drawn plans solved in one process, by two threads and then by one.</summary>
internal static class SoakCommand
{
    internal const string Verb = "soak";

    internal static int Run(string[] args, TextWriter output)
    {
        if (args is not [Verb, var count]
            || !int.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out int plans)
            || plans < 1)
        {
            output.WriteLine($"{Verb} PLANS");
            return 2;
        }

        return new SoakRun(plans, output).Run() ? 0 : 1;
    }
}
