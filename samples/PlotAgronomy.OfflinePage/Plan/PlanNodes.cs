using System.Text.Json;

namespace PlotAgronomy.OfflinePage.Plan;

/// <summary>Finds the values in the text of a plan.</summary>
internal static class PlanNodes
{
    private static readonly JsonReaderOptions Options = new()
    {
        CommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,
    };

    /// <summary>The outermost value, or null where the text is no JSON; what is wrong then is told by the library.</summary>
    internal static PlanNode? Read(ReadOnlySpan<byte> text)
    {
        try
        {
            var reader = new Utf8JsonReader(text, Options);
            reader.Read();
            return Read(ref reader);
        }
        catch (Exception notJson) when (notJson is JsonException or InvalidOperationException)
        {
            return null;
        }
    }

    private static PlanNode Read(ref Utf8JsonReader reader)
    {
        int start = (int)reader.TokenStartIndex;
        return reader.TokenType switch
        {
            JsonTokenType.StartObject => Part(ref reader, start),
            JsonTokenType.StartArray => List(ref reader, start),
            JsonTokenType.String => Leaf(reader, PlanNodeKind.Words, reader.GetString()!),
            _ => Leaf(reader, PlanNodeKind.Plain, System.Text.Encoding.UTF8.GetString(reader.ValueSpan)),
        };
    }

    private static PlanNode Leaf(Utf8JsonReader reader, PlanNodeKind kind, string words) =>
        new(kind, (int)reader.TokenStartIndex, (int)reader.BytesConsumed) { Words = words };

    private static PlanNode Part(ref Utf8JsonReader reader, int start)
    {
        var members = new List<PlanMember>();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            int at = (int)reader.TokenStartIndex;
            string name = reader.GetString()!;
            reader.Read();
            members.Add(new(name, at, Read(ref reader)));
        }

        return new(PlanNodeKind.Part, start, (int)reader.BytesConsumed) { Members = members };
    }

    private static PlanNode List(ref Utf8JsonReader reader, int start)
    {
        var items = new List<PlanNode>();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            items.Add(Read(ref reader));
        }

        return new(PlanNodeKind.List, start, (int)reader.BytesConsumed) { Items = items };
    }
}
