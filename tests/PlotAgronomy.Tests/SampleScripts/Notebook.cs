using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml.Linq;

namespace PlotAgronomy.Tests.SampleScripts;

/// <summary>A notebook file (nbformat 4): its cells of code, and what they printed and drew.</summary>
internal sealed class Notebook(string text)
{
    private const string Drawing = "image/svg+xml";

    private static readonly JsonSerializerOptions AsNotebooksAre = new()
    {
        WriteIndented = true,
        IndentSize = 1,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        NewLine = "\n",
    };

    private readonly JsonNode root = JsonNode.Parse(text)!;

    private IEnumerable<JsonNode> CodeCells => root["cells"]!.AsArray().Where(c => (string?)c!["cell_type"] == "code").Select(c => c!);

    internal IReadOnlyList<string> Code => [.. CodeCells.Select(c => Joined(c["source"]!))];

    /// <summary>What each cell printed.</summary>
    internal IReadOnlyList<string> Printed => [.. CodeCells.Select(c => string.Concat(Outputs(c).Where(o => o["text"] is not null).Select(o => Joined(o["text"]!))))];

    /// <summary>The words of what each cell drew; where they stand differs with the fonts of the machine.</summary>
    internal IReadOnlyList<string> Drawn => [.. CodeCells.Select(c => string.Join(" | ", Outputs(c).Select(o => o["data"]?[Drawing]).OfType<JsonNode>().SelectMany(d => WordsOf(Joined(d)))))];

    internal IReadOnlyList<string> Errors => [.. CodeCells.SelectMany(Outputs).Where(o => (string?)o["output_type"] == "error").Select(o => (string)o["evalue"]!)];

    /// <summary>The same cells with what they print and draw when they are run by another; what the kernel tells of packages is left out.</summary>
    internal string WithOutputsOf(Notebook run)
    {
        foreach (var (mine, its) in CodeCells.Zip(run.CodeCells))
        {
            mine["outputs"] = new JsonArray([.. Outputs(its).Where(o => o["text"] is not null || o["data"]?[Drawing] is not null).Select(Kept)]);
        }

        return root.ToJsonString(AsNotebooksAre) + "\n";
    }

    private static JsonNode Kept(JsonNode output) =>
        output["text"] is { } printed
            ? new JsonObject { ["name"] = "stdout", ["output_type"] = "stream", ["text"] = Lines(Joined(printed)) }
            : new JsonObject { ["data"] = new JsonObject { [Drawing] = Lines(Joined(output["data"]![Drawing]!)) }, ["metadata"] = new JsonObject(), ["output_type"] = "display_data" };

    private static JsonArray Lines(string text) => new([.. text.ReplaceLineEndings("\n").Split('\n').Select((line, i) => (line, i)).Aggregate(new List<string>(), Add).Select(l => (JsonNode)l)]);

    private static List<string> Add(List<string> lines, (string Line, int At) next)
    {
        if (next.At > 0)
        {
            lines[^1] += "\n";
        }

        lines.Add(next.Line);
        return lines;
    }

    private static IEnumerable<JsonNode> Outputs(JsonNode cell) => cell["outputs"]!.AsArray().Select(o => o!);

    private static string Joined(JsonNode text) => text is JsonArray lines ? string.Concat(lines.Select(l => (string)l!)) : (string)text!;

    private static IEnumerable<string> WordsOf(string svg)
    {
        XNamespace space = "http://www.w3.org/2000/svg";
        return XDocument.Parse(svg).Descendants(space + "text").Select(t => t.Value.Trim());
    }
}
