using System.Text;
using PlotAgronomy.Records;
using UnitsNet;

namespace PlotAgronomy.Tests.Records;

public sealed class PlotBookFolderTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("plot-book").FullName;

    private string FileOf(string writer) => Path.Combine(folder, $"{writer}.jsonl");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static RainEntry Rain(int day, double inches = 1) => new() { On = Books.Day(2025, 5, day), Plot = Books.North, Amount = Length.FromInches(inches) };

    [Fact]
    public void What_was_added_is_there_for_the_next_who_opens_the_folder()
    {
        var added = PlotBookFolder.Open(folder, "anna").Append(Books.OneOfEachSort());
        Assert.Equal("anna-1", added[0].Id);
        Assert.Equal("anna-13", Assert.Single(PlotBookFolder.Open(folder, "anna").Append(Rain(1))).Id);
        Assert.Equal(13, PlotBookFolder.Open(folder, "ben").Read().Current.Length);
    }

    [Fact]
    public void Broken_off_at_any_byte_only_the_entry_being_written_is_lost_and_the_next_is_kept()
    {
        PlotBookFolder.Open(folder, "anna").Append(Rain(1), Rain(2));
        byte[] before = File.ReadAllBytes(FileOf("anna"));
        PlotBookFolder.Open(folder, "anna").Append(Rain(3));
        byte[] after = File.ReadAllBytes(FileOf("anna"));
        for (int length = before.Length; length < after.Length; length++)
        {
            File.WriteAllBytes(FileOf("anna"), after[..length]);
            var torn = PlotBookFolder.Open(folder, "anna").Read();
            bool isWhole = length == after.Length - 1;
            Assert.Equal(isWhole ? 3 : 2, torn.Current.Length);
            Assert.Equal(length == before.Length || isWhole ? [] : ["record-torn-line"], torn.Findings.Select(f => f.Code));

            PlotBookFolder.Open(folder, "anna").Append(Rain(4));
            Assert.Equal(after[..length], File.ReadAllBytes(FileOf("anna"))[..length]);
            var next = PlotBookFolder.Open(folder, "anna").Read();
            Assert.Equal(isWhole ? 4 : 3, next.Current.Length);
            Assert.Equal(next.Entries.Length, next.Entries.Select(e => e.Id).Distinct().Count());
            Assert.Equal(length == before.Length || isWhole ? [] : ["record-line-set-aside"], next.Findings.Select(f => f.Code));
        }
    }

    /// <summary>A stream that keeps what fits and then fails, as a full disk or a pulled plug.</summary>
    private sealed class Failing(int holds, int more) : MemoryStream
    {
        private int left = holds + more;

        public override void Write(ReadOnlySpan<byte> buffer)
        {
            int fits = Math.Min(left, buffer.Length);
            base.Write(buffer[..fits]);
            left -= fits;
            if (fits < buffer.Length)
            {
                throw new IOException("full");
            }
        }
    }

    [Fact]
    public void A_stream_that_fails_while_an_entry_is_written_keeps_those_before_it()
    {
        byte[] before = PlotBook.Empty.With("anna", Rain(1), Rain(2)).Lines();
        int next = PlotBook.Empty.With("anna", Rain(3)).Lines().Length;
        for (int left = 0; left < next; left++)
        {
            using var stream = new Failing(before.Length, left);
            stream.Write(before);
            Assert.Throws<IOException>(() => PlotBook.Append(stream, "book", "anna", Rain(3)));
            var book = Books.Read(stream.ToArray());
            Assert.Equal(left < next - 1 ? 2 : 3, book.Current.Length);
            Assert.Equal(left is 0 || left == next - 1 ? 0 : 1, book.SetAside.Length);
        }

        Assert.Throws<ArgumentException>(() => PlotBook.Append(Stream.Null, "book", "an na", Rain(3)));
        using var closed = new MemoryStream(before, writable: false);
        Assert.Throws<ArgumentException>(() => PlotBook.Append(closed, "book", "anna", Rain(3)));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Writers_at_the_same_time_lose_nothing(bool ofOneName)
    {
        const int Each = 25;
        await Task.WhenAll(Enumerable.Range(0, 4).Select(w => Task.Run(() =>
        {
            var mine = PlotBookFolder.Open(folder, ofOneName ? "anna" : $"writer{w}");
            for (int i = 0; i < Each; i++)
            {
                mine.Append(Rain(1 + i, w + 1));
            }
        }, TestContext.Current.CancellationToken)));
        var book = PlotBookFolder.Open(folder, "reader").Read();
        Assert.Empty(book.Findings);
        Assert.Equal(4 * Each, book.Current.Length);
        Assert.Equal(Each * (1 + 2 + 3 + 4), book.Current.OfType<RainEntry>().Sum(r => r.Amount.Inches), 1e-9);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void An_entry_that_could_not_be_read_back_is_refused_and_nothing_is_written(bool isTooLong)
    {
        string note = isTooLong ? new string('x', 300_000) : $"{(char)0xD800}";
        var bad = new NoteEntry { On = Books.Day(2025, 5, 2), Plot = Books.North, Note = note };
        PlotBookFolder.Open(folder, "anna").Append(Rain(1));
        byte[] before = File.ReadAllBytes(FileOf("anna"));
        Assert.ThrowsAny<ArgumentException>(() => PlotBookFolder.Open(folder, "anna").Append(Rain(2), bad));
        Assert.Equal(before, File.ReadAllBytes(FileOf("anna")));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_refused_and_none_is_made()
    {
        Assert.Throws<DirectoryNotFoundException>(() => PlotBookFolder.Open(Path.Combine(folder, "none"), "anna"));
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
    }

    [Theory]
    [InlineData("../anna")]
    [InlineData("a/b")]
    [InlineData(" ")]
    public void A_writer_cannot_name_another_folder(string writer) => Assert.ThrowsAny<ArgumentException>(() => PlotBookFolder.Open(folder, writer));

    [Fact]
    public void Bytes_that_are_no_text_are_set_aside()
    {
        PlotBookFolder.Open(folder, "anna").Append(Rain(1));
        File.WriteAllBytes(FileOf("ben"), [0xFF, 0xFE, (byte)'\n', .. Encoding.UTF8.GetBytes("not json\n[]\n{}\n")]);
        var book = PlotBookFolder.Open(folder, "anna").Read();
        Assert.Single(book.Current);
        Assert.Equal(4, book.SetAside.Length);
    }
}
