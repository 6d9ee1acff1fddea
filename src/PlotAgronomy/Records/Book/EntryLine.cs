using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Records;

/// <summary>One entry as one line of JSON, every field a text as a person would write it.</summary>
internal static class EntryLine
{
    internal const int Version = 1;

    private const string VersionName = "v";
    private const string PartsName = "parts";
    private const int Deepest = 4;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private static readonly JsonWriterOptions Readable = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    internal static int Longest => (int)RecordConstants.All["longest-line"];

    /// <summary>The line in UTF-8, with its end.</summary>
    /// <exception cref="ArgumentException">It would be longer than any line that is read, or a text is none.</exception>
    internal static byte[] Of(BookEntry entry)
    {
        using var held = new MemoryStream();
        using (var json = new Utf8JsonWriter(held, Readable))
        {
            var written = EntryKinds.Written(entry);
            json.WriteStartObject();
            json.WriteNumber(VersionName, Version);
            WriteFields(json, written);
            if (!written.Parts.IsEmpty)
            {
                json.WriteStartArray(PartsName);
                foreach (var part in written.Parts)
                {
                    json.WriteStartObject();
                    WriteFields(json, part);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
            }

            json.WriteEndObject();
        }

        held.WriteByte((byte)'\n');
        return held.Length <= Longest
            ? held.ToArray()
            : throw new ArgumentException(FormattableString.Invariant($"{entry} has more than {Longest} bytes."), nameof(entry));
    }

    /// <summary>The entry of a line without its end.</summary>
    /// <exception cref="DataFormatException">It holds none: the message names file, line and field.</exception>
    internal static BookEntry Read(ReadOnlySpan<byte> bytes, string file, int line, KindCatalog kinds)
    {
        if (bytes.Length > Longest)
        {
            throw new DataFormatException(file, line, null, FormattableString.Invariant($"longer than {Longest} characters"));
        }

        return EntryKinds.Read(Fields(bytes, file, line, kinds));
    }

    private static FieldReader Fields(ReadOnlySpan<byte> bytes, string file, int line, KindCatalog kinds)
    {
        try
        {
            using var document = JsonDocument.Parse(Strict.GetString(bytes), new JsonDocumentOptions { MaxDepth = Deepest });
            return Reader(document.RootElement, file, line, kinds, isPart: false);
        }
        catch (Exception broken) when (broken is JsonException or DecoderFallbackException)
        {
            throw new DataFormatException(file, line, null, "is no line of JSON");
        }
        catch (InvalidOperationException)
        {
            // An escape that is half a character.
            throw new DataFormatException(file, line, null, "holds a text that is none");
        }
    }

    private static void WriteFields(Utf8JsonWriter json, FieldWriter written)
    {
        foreach (var (name, text) in written.Fields)
        {
            json.WriteString(name, Strict.GetBytes(text));
        }
    }

    private static FieldReader Reader(JsonElement at, string file, int line, KindCatalog kinds, bool isPart)
    {
        if (at.ValueKind != JsonValueKind.Object)
        {
            throw new DataFormatException(file, line, null, "expected an object");
        }

        var fields = new Dictionary<string, string>(StringComparer.Ordinal);
        ImmutableArray<FieldReader> parts = [];
        bool hasVersion = isPart;
        foreach (var property in at.EnumerateObject())
        {
            if (!isPart && property.NameEquals(VersionName))
            {
                CheckVersion(property.Value, file, line);
                hasVersion = true;
            }
            else if (!isPart && property.NameEquals(PartsName) && property.Value.ValueKind == JsonValueKind.Array)
            {
                parts = [.. property.Value.EnumerateArray().Select(p => Reader(p, file, line, kinds, isPart: true))];
            }
            else if (property.Value.ValueKind != JsonValueKind.String || string.IsNullOrWhiteSpace(property.Value.GetString()))
            {
                throw new DataFormatException(file, line, property.Name, "expected a text that is not blank");
            }
            else if (!fields.TryAdd(property.Name, property.Value.GetString()!))
            {
                throw new DataFormatException(file, line, property.Name, "stands twice");
            }
        }

        return hasVersion
            ? new FieldReader(file, line, fields, parts, kinds)
            : throw new DataFormatException(file, line, VersionName, "is missing");
    }

    private static void CheckVersion(JsonElement at, string file, int line)
    {
        if (at.ValueKind != JsonValueKind.Number || !at.TryGetInt32(out int version) || version < 1)
        {
            throw new DataFormatException(file, line, VersionName, "expected a whole number from 1");
        }

        if (version > Version)
        {
            throw new DataFormatException(
                file,
                line,
                VersionName,
                FormattableString.Invariant($"version {version} is newer than {Version}")
            );
        }
    }
}
