using System.Text;
using System.Text.Json;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <summary>A JSON document of bounded size; every getter names file, line and field when a value is not what it should
/// be.</summary>
internal sealed class WeatherJson
{
    private readonly string file;
    private readonly JsonAt value;
    private readonly string path;

    private WeatherJson(string file, JsonAt value, string path) => (this.file, this.value, this.path) = (file, value, path);

    private static int MostValues => (int)WeatherConstants.All["most-values"];

    internal int Line => value.Line;

    internal bool IsNull => value.Kind == JsonTokenType.Null;

    internal bool IsText => value.Kind == JsonTokenType.String;

    internal bool IsObject => value.Kind == JsonTokenType.StartObject;

    /// <summary>The fields of a document: of GeoJSON they stand under <c>properties</c>, of linked JSON at the top.</summary>
    internal static WeatherJson Fields(string text, string file) => Document(text, file).Properties;

    internal WeatherJson Properties => Find("properties") ?? this;

    internal static WeatherJson Document(string text, string file)
    {
        CheckBounds(text, file);
        var root = new WeatherJson(file, JsonAt.Parse(text, file), "");
        if (!root.IsObject)
        {
            throw root.Problem("expected an object");
        }

        return root;
    }

    internal WeatherJson? Find(string name) =>
        value.Member(name) is { } member ? new(file, member, path.Length == 0 ? name : $"{path}.{name}") : null;

    internal WeatherJson Need(string name) => Find(name) ?? throw Problem($"'{name}' is missing");

    internal IEnumerable<WeatherJson> Items() =>
        value.Kind == JsonTokenType.StartArray
            ? value.Items.Select((item, i) => new WeatherJson(file, item, FormattableString.Invariant($"{path}[{i}]")))
            : throw Problem("expected a list");

    internal string Text() => IsText ? value.Text : throw Problem("expected a text");

    internal bool Flag() =>
        value.Kind switch
        {
            JsonTokenType.True => true,
            JsonTokenType.False => false,
            _ => throw Problem("expected true or false"),
        };

    internal double Number() =>
        value.Kind == JsonTokenType.Number && double.IsFinite(value.Number) ? value.Number : throw Problem("expected a number");

    internal DateTimeOffset Moment() =>
        IsoInterval.TryMoment(Text(), out var moment)
            ? moment
            : throw Problem($"expected a moment with its offset, found '{IsoInterval.Shortened(Text())}'");

    internal TimeSlot Interval(DateTimeOffset? now) =>
        IsoInterval.TryRead(Text(), now, out var slot, out string problem) ? slot : throw Problem(problem);

    internal DataFormatException Problem(string problem) => new(file, value.Line, path.Length == 0 ? null : path, problem);

    /// <summary>Counts the values before any of them is held, and refuses text that is not text.</summary>
    private static void CheckBounds(string text, string file)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(text.TrimStart('\uFEFF'));
        var reader = new Utf8JsonReader(bytes);
        int count = 0;
        try
        {
            while (reader.Read())
            {
                if (++count > MostValues)
                {
                    throw new DataFormatException(
                        file,
                        LineAt(bytes, reader.TokenStartIndex),
                        null,
                        FormattableString.Invariant($"more than {MostValues} values")
                    );
                }

                if (reader.TokenType is JsonTokenType.String or JsonTokenType.PropertyName && reader.ValueIsEscaped)
                {
                    _ = reader.GetString();
                }
            }
        }
        catch (JsonException problem)
        {
            throw new DataFormatException(file, (int)(problem.LineNumber ?? 0) + 1, null, $"not valid JSON: {problem.Message}");
        }
        catch (InvalidOperationException)
        {
            throw new DataFormatException(file, LineAt(bytes, reader.TokenStartIndex), null, "a text holds half a character");
        }
    }

    private static int LineAt(ReadOnlySpan<byte> bytes, long position) => 1 + bytes[..(int)position].Count((byte)'\n');
}
