using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Records;

/// <summary>A log of entries, one a line. Lines are added at the end and never changed: a torn one is closed and set
/// aside.</summary>
internal static class BookLog
{
    private const byte LineEnd = (byte)'\n';

    /// <summary>Reads every line; what is no entry is set aside with its place.</summary>
    internal static (ImmutableArray<BookEntry> Entries, ImmutableArray<AsideLine> Aside) Read(
        ReadOnlySpan<byte> bytes,
        string file,
        KindCatalog kinds
    )
    {
        var entries = ImmutableArray.CreateBuilder<BookEntry>();
        var aside = ImmutableArray.CreateBuilder<AsideLine>();
        int number = 0;
        while (!bytes.IsEmpty)
        {
            number++;
            int end = bytes.IndexOf(LineEnd);
            bool isWhole = end >= 0;
            var line = isWhole ? bytes[..end] : bytes;
            bytes = isWhole ? bytes[(end + 1)..] : [];
            line = line.TrimEnd((byte)'\r');
            if (line.IsEmpty)
            {
                continue;
            }

            try
            {
                var entry = EntryLine.Read(line, file, number, kinds);
                entries.Add(
                    entry.Id is not null ? entry : throw new DataFormatException(file, number, EntryKinds.Id, "is missing")
                );
            }
            catch (DataFormatException problem)
            {
                aside.Add(new(System.Text.Encoding.UTF8.GetString(line), problem.Message, !isWhole));
            }
        }

        return (entries.ToImmutable(), aside.ToImmutable());
    }

    /// <summary>Everything a stream holds from its beginning.</summary>
    internal static byte[] Whole(Stream stream, string file)
    {
        int most = (int)RecordConstants.All["longest-book"];
        using var held = new MemoryStream();
        byte[] buffer = new byte[64 * 1024];
        for (int read; (read = stream.Read(buffer, 0, buffer.Length)) > 0;)
        {
            held.Write(buffer, 0, read);
            if (held.Length > most)
            {
                throw new DataFormatException(file, 1, null, FormattableString.Invariant($"longer than {most} bytes"));
            }
        }

        return held.ToArray();
    }

    /// <summary>Adds entries at the end, each in one write that ends its line.</summary>
    /// <returns>The entries with their names.</returns>
    internal static ImmutableArray<BookEntry> Append(
        Stream stream,
        string file,
        string writer,
        IEnumerable<BookEntry> entries,
        KindCatalog kinds
    )
    {
        stream.Position = 0;
        byte[] before = Whole(stream, file);
        var known = Read(before, file, kinds);
        ImmutableArray<BookEntry> named = [.. Named(writer, known.Entries, known.Aside.Length, entries)];
        byte[][] lines = [.. named.Select(EntryLine.Of)];
        stream.Position = stream.Length;
        if (before.Length > 0 && before[^1] != LineEnd)
        {
            stream.WriteByte(LineEnd);
        }

        foreach (byte[] line in lines)
        {
            stream.Write(line);
        }

        return named;
    }

    /// <summary>Entries with the writer's next numbers. Lines set aside keep theirs: their number may be among them.</summary>
    internal static IEnumerable<BookEntry> Named(
        string writer,
        IEnumerable<BookEntry> known,
        int aside,
        IEnumerable<BookEntry> entries
    )
    {
        int last = known
            .Select(e => EntryId.Checked(e.Id!, nameof(entries)))
            .Where(id => id.Writer == writer)
            .Select(id => id.Number)
            .DefaultIfEmpty()
            .Max();
        int next = last + aside + 1;
        foreach (var entry in entries)
        {
            ArgumentNullException.ThrowIfNull(entry, nameof(entries));
            yield return entry.Id is null
                ? entry with
                {
                    Id = new EntryId(writer, next++).ToString(),
                }
                : throw new ArgumentException($"{entry} is in a book already, as {entry.Id}.", nameof(entries));
        }
    }
}
