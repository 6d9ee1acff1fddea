using System.Globalization;

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

/// <summary>A member of a JSON object: its name, where that stands, and its value.</summary>
internal sealed record PlanMember(string Name, PlanNode Key, PlanNode Value);

/// <summary>A JSON value that remembers where it stands in the file.</summary>
/// <param name="kind">What it is.</param>
/// <param name="path">JSON path, such as <c>$.plot.sides.width</c>.</param>
/// <param name="text">The text of a string, the digits of a number, true or false.</param>
internal sealed class PlanNode(PlanNodeKind kind, string path, string text = "")
{
    internal const string Root = "$";
    internal const string True = "true";
    internal const string False = "false";

    // Made when something is put into them: most nodes are plain values.
    private List<PlanNode>? items;
    private List<PlanMember>? members;

    internal PlanNodeKind Kind => kind;

    internal string Path => path;

    internal string Text => text;

    internal int Line { get; init; }

    internal int Column { get; init; }

    internal List<PlanNode> Items => items ??= [];

    internal List<PlanMember> Members => members ??= [];

    /// <summary>Whether it is an object or a list that holds nothing.</summary>
    internal bool IsEmpty => Kind is PlanNodeKind.Object or PlanNodeKind.Array && Items.Count + Members.Count == 0;

    internal static string MemberPath(string path, string name) => $"{path}.{name}";

    internal static string ItemPath(string path, int index) => string.Create(CultureInfo.InvariantCulture, $"{path}[{index}]");

    internal PlanNode? Find(string name)
    {
        foreach (var member in Members)
        {
            if (member.Name == name)
            {
                return member.Value;
            }
        }

        return null;
    }

    internal PlanProblem Problem(string wrong) =>
        new()
        {
            Line = Line,
            Column = Column,
            Path = Path,
            Text = wrong,
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
