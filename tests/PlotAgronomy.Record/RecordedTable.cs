using System.IO.Compression;
using System.Text;

namespace PlotAgronomy.Record;

/// <summary>The table of one part, as compressed CSV with columns case, meaning, value.</summary>
internal static class RecordedTable
{
    private const string Heading = "case,meaning,value";

    internal static string PathOf(string folder, IRecordedPart part) => Path.Combine(folder, "recorded", $"{part.Name}.csv.gz");

    internal static void Write(string path, IEnumerable<RecordedRow> rows)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using var file = File.Create(path);
        using var packed = new GZipStream(file, CompressionLevel.SmallestSize);
        using var writer = new StreamWriter(packed, new UTF8Encoding(false)) { NewLine = "\n" };
        writer.WriteLine(Heading);
        foreach (var row in rows)
        {
            writer.WriteLine(CsvLine.Write(row.Case, row.Meaning, row.Value));
        }
    }

    internal static List<RecordedRow> Read(string path)
    {
        using var file = File.OpenRead(path);
        using var packed = new GZipStream(file, CompressionMode.Decompress);
        using var reader = new StreamReader(packed, Encoding.UTF8);
        return [.. CsvLine.ReadAll(reader, Heading).Select(cells => new RecordedRow(cells[0], cells[1], cells[2]))];
    }
}
