using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.PlanFiles;

/// <summary>What a plan file says correctly and cannot mean, such as 420 acres: the findings of the rooms, each at the field it
/// speaks of.</summary>
public static class PlanSense
{
    private static readonly Lazy<ILookup<string, string>> Fields = Table.Grouped(
        "PlanFiles/Data/sense.csv",
        row => row.Text("code"),
        row => row.Text("fields")
    );

    /// <summary>Holds what the rooms find implausible in a plan against the file that it was read from.</summary>
    /// <param name="plan">Plan, as reading the file gave it.</param>
    /// <param name="json">Text of the file.</param>
    /// <returns>One problem a finding, in the order of the file; none where nothing is implausible.</returns>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public static ImmutableArray<PlanProblem> Of(PlotPlan plan, string json)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(json);
        return PlanNodeReader.Read(json, out _) is { } root
            ? [.. Problems(root, plan.Solve().Findings).OrderBy(p => p.Line).ThenBy(p => p.Column)]
            : [];
    }

    /// <summary>What the parts of a plan show by themselves, where the whole could not be read.</summary>
    internal static IEnumerable<Finding> Of(Plot? plot, SoilReport? report, DateOnly? planting) =>
        (plot?.Measured.Findings ?? []).Concat(planting is { } day ? report?.Check(day) ?? [] : []);

    internal static IEnumerable<PlanProblem> Problems(PlanNode root, IEnumerable<Finding> findings) =>
        from finding in findings
        from fields in Fields.Value[finding.Code].Take(1)
        select Place(root, fields.Split(';'), finding.Subject).Problem(finding.Text);

    /// <summary>The first of the fields that stands there; in a list the item that names the subject.</summary>
    private static PlanNode Place(PlanNode root, string[] fields, string? subject)
    {
        var field = fields.Select(f => Find(root, f)).OfType<PlanNode>().FirstOrDefault()
            ?? Find(root, fields[0].Split('.')[0])
            ?? root;
        return field.Items.FirstOrDefault(i => Names(i, subject)) ?? field;
    }

    private static PlanNode? Find(PlanNode root, string path) =>
        path.Split('.').Aggregate<string, PlanNode?>(root, (node, name) => node?.Find(name));

    private static bool Names(PlanNode item, string? subject) =>
        item.Members.Any(m => string.Equals(m.Value.Text, subject, StringComparison.OrdinalIgnoreCase));
}
