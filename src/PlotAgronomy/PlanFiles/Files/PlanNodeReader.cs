using System.Text;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>Reads JSON text into nodes that know their line and column.</summary>
internal static class PlanNodeReader
{
    private static readonly JsonReaderOptions Options = new()
    {
        CommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,
        MaxDepth = (int)PlanLimits.All["nesting"],
    };

    /// <summary>The root node, or null and the problem when the text is not JSON.</summary>
    internal static PlanNode? Read(string json, out PlanProblem? problem)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(json.TrimStart('\uFEFF'));
        var reader = new Utf8JsonReader(bytes, Options);
        var places = new TextPlaces(bytes);
        try
        {
            reader.Read();
            var root = Value(ref reader, places, PlanNode.Root);
            reader.Read();
            problem = null;
            return root;
        }
        catch (JsonException error)
        {
            problem = new PlanProblem
            {
                Line = (int)(error.LineNumber ?? 0) + 1,
                Column = (int)(error.BytePositionInLine ?? 0) + 1,
                Path = PlanNode.Root,
                Text = $"this is not JSON: {Sentence(error.Message)}",
            };
            return null;
        }
    }

    private static PlanNode Value(ref Utf8JsonReader reader, TextPlaces places, string path)
    {
        var (line, column) = places.Of((int)reader.TokenStartIndex);
        PlanNode Leaf(PlanNodeKind kind, string text = "") => new(kind, path, text) { Line = line, Column = column };
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                var whole = Leaf(PlanNodeKind.Object);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
                {
                    var (keyLine, keyColumn) = places.Of((int)reader.TokenStartIndex);
                    string name = Text(ref reader, keyLine, keyColumn);
                    string memberPath = PlanNode.MemberPath(path, name);
                    reader.Read();
                    var key = new PlanNode(PlanNodeKind.Text, memberPath, name) { Line = keyLine, Column = keyColumn };
                    whole.Members.Add(new(name, key, Value(ref reader, places, memberPath)));
                }

                return whole;
            case JsonTokenType.StartArray:
                var list = Leaf(PlanNodeKind.Array);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
                {
                    list.Items.Add(Value(ref reader, places, PlanNode.ItemPath(path, list.Items.Count)));
                }

                return list;
            case JsonTokenType.String:
                return Leaf(PlanNodeKind.Text, Text(ref reader, line, column));
            case JsonTokenType.Number:
                return Leaf(PlanNodeKind.Number, Encoding.UTF8.GetString(reader.ValueSpan));
            case JsonTokenType.True or JsonTokenType.False:
                return Leaf(PlanNodeKind.TrueOrFalse, reader.TokenType == JsonTokenType.True ? PlanNode.True : PlanNode.False);
            default:
                return Leaf(PlanNodeKind.Null);
        }
    }

    /// <summary>An escaped half of a character is sound JSON, but no text.</summary>
    private static string Text(ref Utf8JsonReader reader, int line, int column)
    {
        try
        {
            return reader.GetString()!;
        }
        catch (InvalidOperationException half)
        {
            throw new JsonException(
                "a text holds half a character, such as a cut picture sign",
                null,
                line - 1,
                column - 1,
                half
            );
        }
    }

    /// <summary>The parser's own message without its trailing position, which is printed in front.</summary>
    private static string Sentence(string message)
    {
        int cut = message.IndexOf(" LineNumber", StringComparison.Ordinal);
        return (cut < 0 ? message : message[..cut]).Trim();
    }
}
