namespace PlotAgronomy.PlanFiles;

/// <summary>What a JSON value is.</summary>
internal enum PlanNodeKind
{
    Object,
    Array,
    Text,
    Number,
    TrueOrFalse,
    Null,
}

/// <summary>A JSON value that remembers where it stands in the file.</summary>
internal sealed class PlanNode
{
    internal required PlanNodeKind Kind { get; init; }

    internal required int Line { get; init; }

    internal required int Column { get; init; }

    internal required string Path { get; init; }

    /// <summary>The text of a string, the digits of a number, true or false.</summary>
    internal string Text { get; init; } = "";

    internal List<PlanNode> Items { get; } = [];

    internal List<(string Name, PlanNode Key, PlanNode Value)> Members { get; } = [];

    internal PlanNode? Find(string name) => Members.FirstOrDefault(m => m.Name == name).Value;

    internal PlanProblem Problem(string text) =>
        new()
        {
            Line = Line,
            Column = Column,
            Path = Path,
            Text = text,
        };

    internal string Describe() =>
        Kind switch
        {
            PlanNodeKind.Object => "an object",
            PlanNodeKind.Array => "a list",
            PlanNodeKind.Text => $"the text '{Text}'",
            PlanNodeKind.Null => "null",
            _ => Text,
        };
}
