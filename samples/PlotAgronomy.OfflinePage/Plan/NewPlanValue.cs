using System.Text.Encodings.Web;
using System.Text.Json;

namespace PlotAgronomy.OfflinePage.Plan;

/// <summary>Writes a value that is new in a plan, with the parts and lists around it that are new too.</summary>
internal static class NewPlanValue
{
    internal const string Indent = "  ";

    /// <summary>The value inside of what the steps name.</summary>
    /// <param name="steps">Steps that are not there yet.</param>
    /// <param name="json">The value.</param>
    /// <param name="indent">Blanks before the line in which it stands.</param>
    internal static string Of(ReadOnlySpan<PlanStep> steps, string json, string indent)
    {
        if (steps.IsEmpty)
        {
            return json;
        }

        string inner = Of(steps[1..], json, indent + Indent);
        return steps[0].Index is not null ? $"[\n{indent}{Indent}{inner}\n{indent}]"
            : IsSmall(steps, indent) ? $"{{ {Quoted(steps[0].Name)}: {inner} }}"
            : $"{{\n{indent}{Indent}{Quoted(steps[0].Name)}: {inner}\n{indent}}}";
    }

    internal static string Quoted(string words) =>
        $"\"{JsonEncodedText.Encode(words, JavaScriptEncoder.UnsafeRelaxedJsonEscaping)}\"";

    /// <summary>Whether a part stands in one line: an item of a list, or what lies deeper than the parts of the plan.</summary>
    private static bool IsSmall(ReadOnlySpan<PlanStep> steps, string indent) =>
        steps.Length == 1 && indent.Length > Indent.Length;
}
