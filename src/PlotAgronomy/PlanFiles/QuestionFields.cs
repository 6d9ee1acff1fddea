namespace PlotAgronomy.PlanFiles;

/// <summary>The field of a plan file that answers each question, gathered from the declarations.</summary>
internal static class QuestionFields
{
    /// <summary>Paths by the code of the question; of a part that stands in several places, in the first of them.</summary>
    internal static IReadOnlyDictionary<string, string> Paths { get; } =
        Below(WholePlan.Shape, PlanNode.Root)
            .DistinctBy(f => f.Code)
            .ToDictionary(f => f.Code, f => f.Path, StringComparer.Ordinal);

    private static IEnumerable<(string Code, string Path)> Below(IPlanDefinition part, string path) =>
        part.Fields.SelectMany(field =>
        {
            string at = PlanNode.MemberPath(path, field.Name);
            var inside = field.Definition is { } below ? Below(below, field.IsList ? $"{at}[*]" : at) : [];
            return field.Answered.Select(code => (code, at)).Concat(inside);
        });
}
