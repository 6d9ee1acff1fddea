using System.Globalization;
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
        MaxDepth = 32,
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
            var root = Value(ref reader, places, "$");
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
                Path = "$",
                Text = $"this is not JSON: {Sentence(error.Message)}",
            };
            return null;
        }
    }

    private static PlanNode Value(ref Utf8JsonReader reader, TextPlaces places, string path)
    {
        var (line, column) = places.Of((int)reader.TokenStartIndex);
        PlanNode Leaf(PlanNodeKind kind, string text = "") =>
            new()
            {
                Kind = kind,
                Line = line,
                Column = column,
                Path = path,
                Text = text,
            };
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                var whole = Leaf(PlanNodeKind.Object);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
                {
                    string name = reader.GetString()!;
                    var (keyLine, keyColumn) = places.Of((int)reader.TokenStartIndex);
                    string memberPath = $"{path}.{name}";
                    reader.Read();
                    var key = new PlanNode
                    {
                        Kind = PlanNodeKind.Text,
                        Line = keyLine,
                        Column = keyColumn,
                        Path = memberPath,
                        Text = name,
                    };
                    whole.Members.Add((name, key, Value(ref reader, places, memberPath)));
                }

                return whole;
            case JsonTokenType.StartArray:
                var list = Leaf(PlanNodeKind.Array);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
                {
                    list.Items.Add(
                        Value(ref reader, places, string.Create(CultureInfo.InvariantCulture, $"{path}[{list.Items.Count}]"))
                    );
                }

                return list;
            case JsonTokenType.String:
                return Leaf(PlanNodeKind.Text, reader.GetString()!);
            case JsonTokenType.Number:
                return Leaf(PlanNodeKind.Number, Encoding.UTF8.GetString(reader.ValueSpan));
            case JsonTokenType.True or JsonTokenType.False:
                return Leaf(PlanNodeKind.TrueOrFalse, reader.TokenType == JsonTokenType.True ? "true" : "false");
            default:
                return Leaf(PlanNodeKind.Null);
        }
    }

    /// <summary>The parser's own message without its trailing position, which is printed in front.</summary>
    private static string Sentence(string message)
    {
        int cut = message.IndexOf(" LineNumber", StringComparison.Ordinal);
        return (cut < 0 ? message : message[..cut]).Trim();
    }
}
