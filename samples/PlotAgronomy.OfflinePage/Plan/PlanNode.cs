namespace PlotAgronomy.OfflinePage.Plan;

/// <summary>A value of the plan's text: what it is, what it says, and the bytes where it stands.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Start">First byte.</param>
/// <param name="End">The byte behind the last.</param>
internal sealed record PlanNode(PlanNodeKind Kind, int Start, int End)
{
    /// <summary>Gets the text of a string, the digits of a number, true or false.</summary>
    internal string Words { get; init; } = "";

    internal IReadOnlyList<PlanMember> Members { get; init; } = [];

    internal IReadOnlyList<PlanNode> Items { get; init; } = [];

    internal PlanNode? Find(PlanStep step) =>
        step.Index is { } index
            ? Items.ElementAtOrDefault(index)
            : Members.FirstOrDefault(m => m.Name == step.Name)?.Value;

    internal PlanNode? Find(PlanPath path) => path.Steps.Aggregate<PlanStep, PlanNode?>(this, (node, step) => node?.Find(step));
}

/// <summary>What a value is.</summary>
internal enum PlanNodeKind
{
    Part,
    List,
    Words,
    Plain,
}

/// <summary>A member of a part: its name, the byte where that begins, and its value.</summary>
internal sealed record PlanMember(string Name, int Start, PlanNode Value);
