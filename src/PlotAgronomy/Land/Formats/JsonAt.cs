using System.Text;
using System.Text.Json;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Land;

/// <summary>A JSON value that knows its line.</summary>
internal sealed class JsonAt
{
    private JsonAt(JsonTokenType kind, int line)
    {
        Kind = kind;
        Line = line;
    }

    internal JsonTokenType Kind { get; }

    internal int Line { get; }

    internal string Text { get; private init; } = "";

    internal double Number { get; private init; }

    internal List<JsonAt> Items { get; } = [];

    internal Dictionary<string, JsonAt> Members { get; } = new(StringComparer.Ordinal);

    internal static JsonAt Parse(string text, string file)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(text.TrimStart('\uFEFF'));
        var reader = new Utf8JsonReader(bytes);
        var lines = new LineCounter(bytes);
        try
        {
            reader.Read();
            var value = Value(ref reader, lines, file);
            return reader.Read()
                ? throw new DataFormatException(
                    file,
                    lines.At(reader.TokenStartIndex),
                    null,
                    "text after the end of the JSON value"
                )
                : value;
        }
        catch (InvalidOperationException)
        {
            // Half of a character of two, written as an escape: the reader finds it only when the text is taken.
            throw new DataFormatException(
                file,
                lines.At(reader.TokenStartIndex),
                null,
                "not valid JSON: a text with half a character"
            );
        }
        catch (JsonException problem)
        {
            throw new DataFormatException(file, (int)(problem.LineNumber ?? 0) + 1, null, "not valid JSON: " + problem.Message);
        }
    }

    internal JsonAt? Member(string name) => Members.GetValueOrDefault(name);

    private static JsonAt Value(ref Utf8JsonReader reader, LineCounter lines, string file)
    {
        int line = lines.At(reader.TokenStartIndex);
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                var map = new JsonAt(JsonTokenType.StartObject, line);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
                {
                    string name = reader.GetString()!;
                    int nameLine = lines.At(reader.TokenStartIndex);
                    reader.Read();
                    if (!map.Members.TryAdd(name, Value(ref reader, lines, file)))
                    {
                        throw new DataFormatException(file, nameLine, name, "the member stands twice");
                    }
                }

                return map;
            case JsonTokenType.StartArray:
                var list = new JsonAt(JsonTokenType.StartArray, line);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
                {
                    list.Items.Add(Value(ref reader, lines, file));
                }

                return list;
            case JsonTokenType.String:
                return new JsonAt(JsonTokenType.String, line) { Text = reader.GetString()! };
            case JsonTokenType.Number:
                return new JsonAt(JsonTokenType.Number, line)
                {
                    Number = reader.TryGetDouble(out double number) ? number : double.NaN,
                };
            default:
                return new JsonAt(reader.TokenType, line);
        }
    }

    /// <summary>Counts lines as the reader moves on.</summary>
    private sealed class LineCounter(byte[] bytes)
    {
        private long at;
        private int line = 1;

        internal int At(long position)
        {
            for (; at < position; at++)
            {
                line += bytes[at] == (byte)'\n' ? 1 : 0;
            }

            return line;
        }
    }
}
