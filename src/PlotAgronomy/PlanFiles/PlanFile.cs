using PlotAgronomy.PlanFiles;

namespace PlotAgronomy;

/// <summary>A plan as a file: one way to get a plan, and the way back.</summary>
/// <example>
/// <code>
/// string json = """{ "planVersion": 1, "plot": { "name": "Fern Bottom", "use": "browsed", "area": "0.6 acers" } }""";
/// foreach (var problem in PlanFile.Read(json).Problems)
/// {
///     Console.WriteLine($"line {problem.Line}, {problem.Path}");
/// }
/// // line 1, $.plot.area
/// </code>
/// </example>
public static class PlanFile
{
    /// <summary>Reads the text of a plan file.</summary>
    /// <param name="json">JSON text; comments and trailing commas are allowed.</param>
    /// <returns>The plan, or all mistakes with line, column and JSON path; nothing is guessed.</returns>
    public static PlanReadResult Read(string json) => ReadWith(json, null);

    /// <summary>Reads the text of a plan file that may name other files, such as one with the outline of the plot.</summary>
    /// <param name="json">JSON text; comments and trailing commas are allowed.</param>
    /// <param name="open">Gives the text of a file by the name that stands in the plan, or null when it may not or cannot be
    /// opened. What may be opened is the caller's to decide: the name is whatever the file says.</param>
    /// <returns>The plan, or all mistakes with line, column and JSON path; nothing is guessed.</returns>
    public static PlanReadResult Read(string json, Func<string, string?> open)
    {
        ArgumentNullException.ThrowIfNull(open);
        return ReadWith(json, open);
    }

    /// <summary>Writes a plan as the text of a plan file.</summary>
    /// <param name="plan">Plan.</param>
    /// <returns>JSON text that <see cref="Read(string)"/> reads as the same plan. What a plan leaves out stays out. The unit that
    /// an amount was typed in is not kept: it is written in one in which it reads back to the last digit.</returns>
    /// <exception cref="ArgumentException">The plan holds what a plan file has no field or word for; the message names every such
    /// thing with its JSON path.</exception>
    /// <remarks>Not kept: the name of an outline, and remarks on the file that it came from.</remarks>
    public static string Write(PlotPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var unsaid = new List<PlanProblem>();
        var root = WholePlan.Shape.Write(plan, PlanNode.Root, unsaid);
        unsaid.AddRange(Read(root).Problems);
        return unsaid.Count == 0
            ? PlanNodeWriter.Write(root)
            : throw new ArgumentException(
                $"A plan file cannot say this plan: {string.Join("; ", unsaid.Select(p => $"{p.Path}: {p.Text}"))}",
                nameof(plan)
            );
    }

    /// <summary>Says which field of a plan file answers a question.</summary>
    /// <param name="question">Question.</param>
    /// <returns>Path of the field, such as <c>$.soilReport.buffer.name</c>; <c>[*]</c> stands for the item of a list that the
    /// question is about. Null where no field answers it, but the plot book, the weather or code.</returns>
    public static string? FieldFor(OpenQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        return QuestionFields.Paths.GetValueOrDefault(question.Code);
    }

    private static PlanReadResult ReadWith(string json, Func<string, string?>? open)
    {
        ArgumentNullException.ThrowIfNull(json);
        return PlanNodeReader.Read(json, out var notJson) is { } root ? Read(root, open) : new() { Problems = [notJson!] };
    }

    private static PlanReadResult Read(PlanNode root, Func<string, string?>? open = null)
    {
        var problems = new List<PlanProblem>();
        var reading = new PlanReading(open);
        return WholePlan.Shape.TryRead(root, null, problems, out var plan, reading)
            ? new() { Plan = plan, Taken = [.. reading.Taken.OrderBy(p => p.Line).ThenBy(p => p.Column)] }
            : new() { Problems = [.. problems.OrderBy(p => p.Line).ThenBy(p => p.Column)] };
    }
}
