using System.Text.RegularExpressions;
using PlotAgronomy.OfflinePage.Plan;

namespace PlotAgronomy.OfflinePage.Fields;

/// <summary>What is typed into a field, and what of it stands in the plan. Nothing is judged here: what is no number is written
/// as it was typed, and the library says what it expects.</summary>
internal static partial class TypedValue
{
    /// <summary>The JSON of what was typed; null where nothing was.</summary>
    internal static string? ToJson(FieldSort sort, string typed)
    {
        string trimmed = typed.Trim();
        return trimmed.Length == 0 ? null
            : sort switch
            {
                FieldSort.Number when Number().IsMatch(trimmed) => trimmed,
                FieldSort.Flag => trimmed,
                FieldSort.Corner when Corner().IsMatch(trimmed) => $"[{trimmed}]",
                FieldSort.Lines => $"[{string.Join(", ", Lines(trimmed).Select(NewPlanValue.Quoted))}]",
                _ => NewPlanValue.Quoted(trimmed),
            };
    }

    /// <summary>What stands in the field.</summary>
    internal static string Of(PlanNode? node) =>
        node switch
        {
            null => "",
            { Kind: PlanNodeKind.List, Items: var items } when items.All(i => i.Kind == PlanNodeKind.Words) =>
                string.Join('\n', items.Select(i => i.Words)),
            { Kind: PlanNodeKind.List, Items: var items } => string.Join(", ", items.Select(i => i.Words)),
            _ => node.Words,
        };

    private static IEnumerable<string> Lines(string typed) =>
        typed.Split('\n').Select(l => l.TrimEnd('\r')).Where(l => l.Length > 0);

    [GeneratedRegex(@"^-?(0|[1-9][0-9]*)(\.[0-9]+)?$")]
    private static partial Regex Number();

    [GeneratedRegex(@"^-?(0|[1-9][0-9]*)(\.[0-9]+)? *, *-?(0|[1-9][0-9]*)(\.[0-9]+)?$")]
    private static partial Regex Corner();
}
