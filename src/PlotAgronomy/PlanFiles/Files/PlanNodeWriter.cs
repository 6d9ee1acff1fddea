using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>Writes nodes as JSON: what fits stands on one line.</summary>
internal static class PlanNodeWriter
{
    private const int LineWidth = 120;
    private const int Indent = 2;

    internal static string Write(PlanNode root)
    {
        var text = new StringBuilder();
        Write(text, root, 0, 0);
        return text.Append('\n').ToString();
    }

    private static void Write(StringBuilder to, PlanNode node, int depth, int before)
    {
        string line = OnOneLine(node);
        bool fits = depth > 0 && depth * Indent + before + line.Length <= LineWidth;
        bool isPlain = node.Members.All(m => m.Value.IsEmpty || IsLeaf(m.Value)) && node.Items.All(IsLeafOrPair);
        if (IsLeaf(node) || node.IsEmpty || (isPlain && fits))
        {
            to.Append(line);
            return;
        }

        bool isObject = node.Kind == PlanNodeKind.Object;
        to.Append(isObject ? '{' : '[');
        string comma = "";
        foreach (
            var (name, value) in node
                .Members.Select(m => (Quoted(m.Name) + ": ", m.Value))
                .Concat(node.Items.Select(i => ("", i)))
        )
        {
            to.Append(comma).Append('\n').Append(' ', (depth + 1) * Indent).Append(name);
            Write(to, value, depth + 1, name.Length);
            comma = ",";
        }

        to.Append('\n').Append(' ', depth * Indent).Append(isObject ? '}' : ']');
    }

    private static string OnOneLine(PlanNode node) =>
        node.Kind switch
        {
            PlanNodeKind.Object when node.IsEmpty => "{}",
            PlanNodeKind.Object =>
                $"{{ {string.Join(", ", node.Members.Select(m => $"{Quoted(m.Name)}: {OnOneLine(m.Value)}"))} }}",
            PlanNodeKind.Array => $"[{string.Join(", ", node.Items.Select(OnOneLine))}]",
            PlanNodeKind.Text => Quoted(node.Text),
            PlanNodeKind.Null => "null",
            _ => node.Text,
        };

    private static bool IsLeaf(PlanNode node) => node.Kind is not (PlanNodeKind.Object or PlanNodeKind.Array);

    private static bool IsLeafOrPair(PlanNode node) =>
        IsLeaf(node) || (node.Kind == PlanNodeKind.Array && node.Items.All(IsLeaf));

    private static string Quoted(string text) =>
        $"\"{JsonEncodedText.Encode(text, JavaScriptEncoder.UnsafeRelaxedJsonEscaping)}\"";
}
