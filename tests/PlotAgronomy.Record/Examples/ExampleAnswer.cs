namespace PlotAgronomy.Record.Examples;

/// <summary>What one example gave; kind ids in its name are written with hyphens.</summary>
internal readonly record struct ExampleAnswer(string File, string Example, string Actual)
{
    /// <summary>A room may move: the file goes by its own name, without its folder.</summary>
    internal static ExampleAnswer Read(string line) => line.Split('\t') is [var file, var example, var actual]
        ? new(file[(file.LastIndexOfAny(['/', '\\']) + 1)..], example.Replace('_', '-'), actual)
        : throw new InvalidDataException($"Not an answer: {line}");
}
