using System.Collections.Immutable;
using System.Globalization;

namespace PlotAgronomy.OfflinePage.Plan;

/// <summary>One step down into a plan: a member by its name, or an item by its place.</summary>
public readonly record struct PlanStep(string Name, int? Index)
{
    public override string ToString() =>
        Index is { } index ? string.Create(CultureInfo.InvariantCulture, $"[{index}]") : $".{Name}";
}

/// <summary>Where a field stands, written as the library writes it: <c>$.soilReport.readings[0].value</c>.</summary>
public sealed record PlanPath(ImmutableArray<PlanStep> Steps)
{
    internal static PlanPath Root { get; } = new([]);

    internal PlanPath Up => new(Steps[..^1]);

    internal PlanStep Last => Steps[^1];

    internal PlanPath Member(string name) => new([.. Steps, new(name, null)]);

    internal PlanPath Item(int index) => new([.. Steps, new("", index)]);

    /// <summary>Reads a path as the library writes it.</summary>
    internal static PlanPath Of(string text)
    {
        var path = Root;
        foreach (string step in text.TrimStart('$').Split('.', '[').Where(s => s.Length > 0))
        {
            bool isItem = int.TryParse(step.TrimEnd(']'), NumberStyles.None, CultureInfo.InvariantCulture, out int index);
            path = isItem && step.EndsWith(']') ? path.Item(index) : path.Member(step);
        }

        return path;
    }

    /// <summary>Whether a text of the library names this place.</summary>
    internal bool Is(string text) => text == ToString();

    /// <summary>Whether a text of the library names this place or one inside it.</summary>
    internal bool Holds(string text) =>
        text.StartsWith(ToString(), StringComparison.Ordinal)
        && (text.Length == ToString().Length || text[ToString().Length] is '.' or '[');

    public override string ToString() => $"${string.Concat(Steps)}";
}
