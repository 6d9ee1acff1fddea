using System.Collections.Immutable;
using PlotAgronomy.Records;

namespace PlotAgronomy.Planning;

/// <summary>What a person typed either gives entries or a line that says what was expected.</summary>
internal static class RecordReading
{
    /// <summary>What cannot be read or cannot be meant is told, and nothing of it is taken.</summary>
    internal static bool Try(Func<ImmutableArray<BookEntry>> read, out ImmutableArray<BookEntry> entries, out string problem)
    {
        try
        {
            entries = read();
            problem = "";
            return true;
        }
        catch (Exception refused) when (refused is FormatException or ArgumentException)
        {
            entries = [];
            problem = refused.Message.Split([" (Parameter ", "\n"], StringSplitOptions.None)[0];
            return false;
        }
    }
}
