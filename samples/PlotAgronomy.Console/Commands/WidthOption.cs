using System.CommandLine;
using System.Globalization;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>--width N</c>: characters a line of text may have.</summary>
internal sealed class WidthOption
{
    private readonly Option<string?> width = new("--width") { Description = "Characters a line of text may have (60 to 200)." };

    internal void AddTo(Command command) => command.Options.Add(width);

    /// <summary>Reads the width; says in one line when it is out of range, and returns false.</summary>
    internal bool TryRead(ParseResult parsed, ConsoleStreams streams, out int? columns)
    {
        columns = null;
        if (parsed.GetValue(width) is not { } text)
        {
            return true;
        }

        if (
            !int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int asked)
            || asked is < FieldSheetWriting.LeastWidth or > FieldSheetWriting.MostWidth
        )
        {
            streams.Error.WriteLine($"--width must be from 60 to 200, found {text}");
            return false;
        }

        columns = asked;
        return true;
    }
}
