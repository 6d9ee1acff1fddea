using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>A text that stands for something.</summary>
/// <param name="example">Example for schema, page and messages; may be empty.</param>
/// <param name="read">Reads the text.</param>
/// <param name="print">Prints a value; null when no text reads back as it.</param>
internal class PlanText<T>(string example, PlanText<T>.Reader read, Func<T, string?> print) : PlanValue<T>
{
    internal delegate bool Reader(string? text, out T? value, out string problem);

    internal override string InWords => Example.Length == 0 ? Word : $"{Word}, such as `{Example}`";

    protected string Example => example;

    protected virtual string Word => "text";

    protected virtual string Expected => "a text";

    internal override void Describe(Utf8JsonWriter schema)
    {
        schema.WriteString("type", "string");
        schema.WriteNumber("minLength", 1);
        schema.WriteNumber("maxLength", (int)PlanLimits.All["text-length"]);
        if (Example.Length > 0)
        {
            SchemaText.WriteNames(schema, "examples", [Example]);
        }
    }

    internal override bool TryRead(PlanNode node, PlanPart at, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        if (node.Kind != PlanNodeKind.Text || string.IsNullOrWhiteSpace(node.Text))
        {
            string such = Example.Length == 0 ? "" : $" such as '{Example}'";
            at.Report(node, $"expected {Expected}{such}, found {node.Describe()}");
            return false;
        }

        double longest = PlanLimits.All["text-length"];
        if (node.Text.Length > longest)
        {
            at.Report(node, $"a text has at most {Amounts.Print(longest, 0)} characters");
            return false;
        }

        if (node.Text.Any(char.IsControl))
        {
            at.Report(node, "a text is one line without control characters");
            return false;
        }

        if (!read(node.Text, out value, out string problem))
        {
            at.Report(node, problem);
            return false;
        }

        return Accepts(value!, node, at);
    }

    internal override PlanNode? Write(T value, string path, List<PlanProblem> refusals)
    {
        if (print(value) is { } text)
        {
            return new PlanNode(PlanNodeKind.Text, path, text);
        }

        refusals.Add(PlanProblem.At(path, $"no text reads back as '{value}'"));
        return null;
    }

    /// <summary>Whether a text that could be read is also allowed; reports it when not.</summary>
    protected virtual bool Accepts(T value, PlanNode node, PlanPart at) => true;
}
