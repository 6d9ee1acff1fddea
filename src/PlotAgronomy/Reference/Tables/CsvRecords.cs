using System.Collections.Immutable;
using System.Text;

namespace PlotAgronomy.Reference;

/// <summary>Splits text into records of fields parted by commas or another sign (RFC 4180 quoting).</summary>
/// <remarks>The first answer of a process waits for this: a field is cut out whole, and one that reads like the field above it is
/// the same string.</remarks>
internal sealed class CsvRecords
{
    private readonly string name;
    private readonly string text;
    private readonly char separator;
    private int at;
    private int line = 1;

    private CsvRecords(string name, string text, char separator)
    {
        this.name = name;
        this.text = text;
        this.separator = separator;
        at = text.StartsWith('\uFEFF') ? 1 : 0;
    }

    internal sealed record Record(int Line, ImmutableArray<string> Fields);

    internal static List<Record> Split(string name, string text, char separator = ',')
    {
        var reader = new CsvRecords(name, text, separator);
        var records = new List<Record>();
        ImmutableArray<string> above = [];
        while (reader.at < text.Length)
        {
            int start = reader.line;
            if (reader.Fields(above) is { IsEmpty: false } fields)
            {
                records.Add(new Record(start, fields));
                above = fields;
            }
        }

        return records;
    }

    /// <summary>The fields up to the end of the record; none of an empty line.</summary>
    private ImmutableArray<string> Fields(ImmutableArray<string> above)
    {
        int start = line;
        bool hasQuotes = false;
        var fields = ImmutableArray.CreateBuilder<string>(above.Length);
        do
        {
            string alike = fields.Count < above.Length ? above[fields.Count] : "";
            int length = text.AsSpan(at).IndexOfAny(separator, '\n', '"');
            int end = length < 0 ? text.Length : at + length;
            bool isQuoted = end < text.Length && text[end] == '"';
            fields.Add(isQuoted ? Quoted(end, start) : Plain(end, alike));
            hasQuotes |= isQuoted;
        } while (at < text.Length && text[at++] == separator);

        line++;
        return fields is [""] && !hasQuotes ? [] : fields.DrainToImmutable();
    }

    private string Plain(int end, string alike)
    {
        var field = text.AsSpan(at, end - at);
        at = end;
        return field.Contains('\r') ? field.ToString().Replace("\r", "", StringComparison.Ordinal)
            : field.SequenceEqual(alike) ? alike
            : field.ToString();
    }

    private string Quoted(int quote, int recordStart)
    {
        if (text.AsSpan(at, quote - at).ContainsAnyExcept('\r'))
        {
            throw Problem(line, "a quote may only open a field");
        }

        var field = new StringBuilder();
        at = quote;
        do
        {
            int start = at + 1;
            at = text.IndexOf('"', start);
            if (at < 0)
            {
                throw Problem(recordStart, "a quote is not closed");
            }

            line += text.AsSpan(start, at - start).Count('\n');
            field.Append(text, start, at - start);
            at++;
        } while (IsDoubled(field));

        while (at < text.Length && text[at] == '\r')
        {
            at++;
        }

        return at == text.Length || text[at] == separator || text[at] == '\n'
            ? field.ToString()
            : throw Problem(line, text[at] == '"' ? "a quote may only open a field" : "text after a closing quote");
    }

    /// <summary>Of two quotes in a row one belongs to the field.</summary>
    private bool IsDoubled(StringBuilder field)
    {
        if (at == text.Length || text[at] != '"')
        {
            return false;
        }

        field.Append('"');
        return true;
    }

    private DataFormatException Problem(int where, string problem) => new(name, where, null, problem);
}
