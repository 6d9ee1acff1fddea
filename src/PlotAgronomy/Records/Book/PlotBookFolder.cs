using System.Collections.Immutable;

namespace PlotAgronomy.Records;

/// <summary>A folder that holds a plot book: one file a writer, to which that writer alone adds.</summary>
/// <remarks>Every writer has a file of his own, so that folders which are copied to and fro need no merging. Two programs under
/// one writer's name take turns. A file is only ever added to.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class PlotBookFolder
{
    private const string Ending = ".jsonl";

    private readonly string folder;
    private readonly string writer;
    private readonly KindCatalog kinds;

    private PlotBookFolder(string folder, string writer, KindCatalog kinds)
    {
        this.folder = folder;
        this.writer = writer;
        this.kinds = kinds;
    }

    /// <summary>Names the folder and who writes.</summary>
    /// <param name="folder">Folder of the book; it must be there.</param>
    /// <param name="writer">Who writes: letters, digits and hyphens.</param>
    /// <param name="kinds">Catalog in which kinds are found; null for the standard one.</param>
    /// <returns>The folder.</returns>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static PlotBookFolder Open(string folder, string writer, KindCatalog? kinds = null) =>
        Directory.Exists(Guard.NotBlank(folder))
            ? new(folder, EntryId.CheckedWriter(writer, nameof(writer)), kinds ?? KindCatalog.Standard)
            : throw new DirectoryNotFoundException($"There is no folder '{folder}'.");

    /// <summary>Reads the book of all writers.</summary>
    /// <returns>The book; lines that are no entry are set aside.</returns>
    public PlotBook Read()
    {
        var book = PlotBook.Empty;
        foreach (string path in Directory.EnumerateFiles(folder, $"*{Ending}").Order(StringComparer.Ordinal))
        {
            using var file = InTurn(path, FileMode.Open, FileAccess.Read, FileShare.Read);
            book = book.With(PlotBook.Read(file, Path.GetFileName(path), kinds));
        }

        return book;
    }

    /// <summary>Adds entries to the writer's own file and waits until they are on the disk.</summary>
    /// <param name="entries">Entries that are in no book yet.</param>
    /// <returns>The entries with their names.</returns>
    /// <exception cref="ArgumentException">An entry is in a book already.</exception>
    /// <exception cref="IOException">The file cannot be written, or another program kept it for too long.</exception>
    public ImmutableArray<BookEntry> Append(params ReadOnlySpan<BookEntry> entries)
    {
        string path = Path.Combine(folder, writer + Ending);
        BookEntry[] given = entries.ToArray();
        using var file = InTurn(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        var named = BookLog.Append(file, Path.GetFileName(path), writer, given, kinds);
        file.Flush(flushToDisk: true);
        return named;
    }

    /// <summary>Names the folder and the writer.</summary>
    /// <returns>Text such as <c>plots, written by anna</c>.</returns>
    public override string ToString() => $"{folder}, written by {writer}";

    /// <summary>Opens a file when nobody else is adding to it.</summary>
    private static FileStream InTurn(string path, FileMode mode, FileAccess access, FileShare share)
    {
        int tries = (int)RecordConstants.All["append-tries"];
        int pause = (int)RecordConstants.All["append-pause"];
        for (int left = tries; ; left--)
        {
            try
            {
                return new FileStream(path, mode, access, share);
            }
            catch (IOException busy)
                when (left > 1 && busy is not (FileNotFoundException or DirectoryNotFoundException or PathTooLongException))
            {
                Thread.Sleep(pause);
            }
        }
    }
}
