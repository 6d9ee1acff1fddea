using System.Collections.Immutable;
using System.Text;

namespace PlotAgronomy.Reference;

/// <summary>Splits text into records of fields parted by commas or another sign (RFC 4180 quoting).</summary>
internal static class CsvRecords
{
    internal sealed record Record(int Line, ImmutableArray<string> Fields);

    internal static List<Record> Split(string name, string text, char separator = ',')
    {
        var records = new List<Record>();
        var fields = ImmutableArray.CreateBuilder<string>();
        var field = new StringBuilder();
        bool quoted = false,
            wasQuoted = false;
        int line = 1,
            startLine = 1;

        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (quoted)
            {
                if (c == '"' && i + 1 < text.Length && text[i + 1] == '"')
                {
                    field.Append('"');
                    i++;
                }
                else if (c == '"')
                {
                    quoted = false;
                }
                else
                {
                    line += c == '\n' ? 1 : 0;
                    field.Append(c);
                }
            }
            else if (c == '"')
            {
                if (field.Length > 0 || wasQuoted)
                {
                    throw new DataFormatException(name, line, null, "a quote may only open a field");
                }

                quoted = wasQuoted = true;
            }
            else if (c == separator)
            {
                EndField();
            }
            else if (c == '\n')
            {
                EndRecord();
                line++;
                startLine = line;
            }
            else if (c != '\r' && (c != '\uFEFF' || i > 0))
            {
                if (wasQuoted)
                {
                    throw new DataFormatException(name, line, null, "text after a closing quote");
                }

                field.Append(c);
            }
        }

        if (quoted)
        {
            throw new DataFormatException(name, startLine, null, "a quote is not closed");
        }

        EndRecord();
        return records;

        void EndField()
        {
            fields.Add(field.ToString());
            field.Clear();
            wasQuoted = false;
        }

        void EndRecord()
        {
            if (fields.Count == 0 && field.Length == 0 && !wasQuoted)
            {
                return;
            }

            EndField();
            records.Add(new Record(startLine, fields.ToImmutable()));
            fields.Clear();
        }
    }
}
