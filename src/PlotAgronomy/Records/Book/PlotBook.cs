using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Records;

/// <summary>The plot book: dated entries of what was done and seen, to which is added and of which nothing is ever taken
/// out.</summary>
/// <remarks>
/// <para>A book is one line of JSON an entry. What holds (<see cref="Current"/>) does not depend on the order of the lines: an
/// entry that corrects another takes its place, a <see cref="StruckEntry"/> takes it out.</para>
/// <para>A line that cannot be read is set aside and reported; the others hold.</para>
/// </remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class PlotBook
{
    private readonly BookState state;
    private readonly ImmutableArray<AsideLine> aside;

    private PlotBook(ImmutableArray<BookEntry> entries, ImmutableArray<AsideLine> aside)
    {
        state = new(entries);
        this.aside = aside;
    }

    /// <summary>Gets a book without entries.</summary>
    public static PlotBook Empty { get; } = new([], []);

    /// <summary>Gets every entry, corrected ones too, by date and name.</summary>
    public ImmutableArray<BookEntry> Entries => state.Entries;

    /// <summary>Gets the entries that hold, by date and name.</summary>
    public ImmutableArray<BookEntry> Current => state.Current;

    /// <summary>Gets the names of the plots, in order.</summary>
    public ImmutableArray<string> Plots =>
        [.. Current.Select(e => e.Plot).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    /// <summary>Gets the lines that are no entry, as they stand.</summary>
    public ImmutableArray<string> SetAside => [.. aside.Select(a => a.Text)];

    /// <summary>Gets the remarks on what was read, most serious first.</summary>
    public ImmutableArray<Finding> Findings => Finding.InOrder([.. aside.Select(Told), .. state.Remarks]);

    /// <summary>Reads a book.</summary>
    /// <param name="stream">Lines of JSON in UTF-8; it stays open.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <param name="kinds">Catalog in which kinds are found; null for the standard one.</param>
    /// <returns>The book; lines that are no entry are set aside.</returns>
    /// <exception cref="DataFormatException">The stream is longer than any book.</exception>
    public static PlotBook Read(Stream stream, string fileName, KindCatalog? kinds = null)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return FromBytes(BookLog.Whole(stream, Guard.NotBlank(fileName)), fileName, kinds);
    }

    /// <summary>Adds entries at the end of a stream that holds a book; what it holds stays as it is.</summary>
    /// <param name="stream">A stream that can be read, written and moved in; it stays open.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <param name="writer">Who writes them: letters, digits and hyphens. No other program may add to the stream at the same
    /// time.</param>
    /// <param name="entries">Entries that are in no book yet.</param>
    /// <returns>The entries with their names.</returns>
    /// <exception cref="ArgumentException">An entry is in a book already, or the stream cannot do all three.</exception>
    public static ImmutableArray<BookEntry> Append(
        Stream stream,
        string fileName,
        string writer,
        params ReadOnlySpan<BookEntry> entries
    )
    {
        ArgumentNullException.ThrowIfNull(stream);
        EntryId.CheckedWriter(writer, nameof(writer));
        if (!stream.CanRead || !stream.CanWrite || !stream.CanSeek)
        {
            throw new ArgumentException("Must be a stream that can be read, written and moved in.", nameof(stream));
        }

        var named = BookLog.Append(stream, Guard.NotBlank(fileName), writer, entries.ToArray(), KindCatalog.Standard);
        stream.Flush();
        return named;
    }

    /// <summary>Reads a book from a table, as <see cref="ToCsv"/> writes it.</summary>
    /// <param name="text">The table. Columns may stand in any order; a row without a date is a further part of the entry above
    /// it, such as another lot.</param>
    /// <param name="fileName">Name used in messages.</param>
    /// <param name="writer">Who writes the entries that have no name yet: letters, digits and hyphens.</param>
    /// <param name="kinds">Catalog in which kinds are found; null for the standard one.</param>
    /// <returns>The book.</returns>
    /// <exception cref="DataFormatException">A row is no entry: the message names file, line and field, and nothing is
    /// taken.</exception>
    public static PlotBook FromCsv(string text, string fileName, string writer, KindCatalog? kinds = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        EntryId.CheckedWriter(writer, nameof(writer));
        var read = BookTable.Read(text, Guard.NotBlank(fileName), kinds ?? KindCatalog.Standard);
        return new PlotBook([.. read.Where(e => e.Id is not null)], []).With(writer, [.. read.Where(e => e.Id is null)]);
    }

    /// <summary>The book with more entries; this one stays as it is.</summary>
    /// <param name="writer">Who writes them: letters, digits and hyphens.</param>
    /// <param name="entries">Entries that are in no book yet.</param>
    /// <returns>The greater book.</returns>
    /// <exception cref="ArgumentException">An entry is in a book already.</exception>
    public PlotBook With(string writer, params ReadOnlySpan<BookEntry> entries)
    {
        EntryId.CheckedWriter(writer, nameof(writer));
        return new([.. Entries, .. BookLog.Named(writer, Entries, 0, entries.ToArray())], aside);
    }

    /// <summary>The book and another one together, such as the books of two people. What both hold stands once.</summary>
    /// <param name="other">Another book.</param>
    /// <returns>Both as one.</returns>
    public PlotBook With(PlotBook other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new([.. Entries, .. other.Entries], [.. aside.Concat(other.aside).Distinct()]);
    }

    /// <summary>Writes every entry as a line of JSON.</summary>
    /// <param name="stream">Where to; it stays open.</param>
    public void WriteTo(Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        foreach (var entry in Entries)
        {
            stream.Write(EntryLine.Of(entry));
        }
    }

    /// <summary>The book as a table with a header.</summary>
    /// <returns>The table; every entry, corrected ones too.</returns>
    public string ToCsv() => BookTable.Write(Entries);

    /// <summary>How much is in it.</summary>
    /// <returns>Text such as <c>12 entries of 2 plots</c>.</returns>
    public override string ToString() =>
        $"{Amounts.Print(Current.Length, 0)} entries of {Amounts.PrintCount(Plots.Length, "plot")}";

    internal static PlotBook FromBytes(ReadOnlySpan<byte> bytes, string file, KindCatalog? kinds)
    {
        var (entries, aside) = BookLog.Read(bytes, file, kinds ?? KindCatalog.Standard);
        return new(entries, aside);
    }

    /// <summary>The entries of a plot that hold, of one sort.</summary>
    internal IEnumerable<T> Of<T>(string plot)
        where T : BookEntry => Current.OfType<T>().Where(e => e.Plot == plot);

    private static Finding Told(AsideLine line) =>
        FindingCatalog.Create(line.IsTorn ? RecordCodes.TornLine : RecordCodes.LineSetAside, ("problem", line.Problem));
}
