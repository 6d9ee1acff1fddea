using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Spreading;

/// <summary>The inputs column of a worked row: <c>rate=8;mph=3</c>.</summary>
internal sealed class WorkedInputs(CsvRow row)
{
    private readonly Dictionary<string, string> values = row.Text("inputs").Split(';').Select(p => p.Split('=')).ToDictionary(p => p[0], p => p[1]);

    internal double this[string name] => double.Parse(values[name], CultureInfo.InvariantCulture);

    internal string Word(string name) => values[name];
}
