using FsCheck;
using FsCheck.Xunit;
using PlotAgronomy.Records;
using UnitsNet;

namespace PlotAgronomy.Tests.Records;

/// <summary>Laws of the book over books drawn from numbers.</summary>
public class PlotBookProperties
{
    private const int Writers = 3;

    [Property(MaxTest = 60)]
    public bool Read_again_in_any_order_of_lines_the_state_is_the_same(NonEmptyArray<(byte, byte)> draws, byte turn)
    {
        var book = Drawn(draws.Get);
        string[] lines = book.Text().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var turned = lines.Select((line, i) => (line, key: (i * (turn + 1) * 7919) % 1009)).OrderBy(l => l.key).Select(l => l.line);
        var again = Books.Read(System.Text.Encoding.UTF8.GetBytes(string.Join('\n', turned) + "\n"));
        return again.State() == book.State() && again.Text() == book.Text() && again.Findings.SequenceEqual(book.Findings);
    }

    [Property(MaxTest = 60)]
    public bool A_table_out_and_in_again_is_the_same_book(NonEmptyArray<(byte, byte)> draws)
    {
        var book = Drawn(draws.Get);
        return PlotBook.FromCsv(book.ToCsv(), "t", "z").Text() == book.Text();
    }

    [Property(MaxTest = 60)]
    public bool A_correction_changes_exactly_what_it_names(NonEmptyArray<(byte, byte)> draws, byte which)
    {
        var book = Drawn(draws.Get);
        if (book.Current.IsEmpty)
        {
            return true;
        }

        var named = book.Current[which % book.Current.Length];
        var after = book.With("z", new RainEntry { On = named.On.AddDays(3), Plot = "elsewhere", Amount = Length.FromInches(9), Corrects = named.Id });
        return after.Current.Where(e => e.Id != "z-1").SequenceEqual(book.Current.Where(e => e.Id != named.Id)) && after.Current.Count(e => e.Id == "z-1") == 1;
    }

    [Property(MaxTest = 60)]
    public bool Two_books_together_are_the_same_either_way(NonEmptyArray<(byte, byte)> one, NonEmptyArray<(byte, byte)> two)
    {
        var a = Drawn(one.Get);
        var b = Drawn(two.Get);
        return a.With(b).State() == b.With(a).State() && a.With(a).State() == a.State();
    }

    [Property(MaxTest = 300)]
    public bool A_changed_byte_harms_its_own_line_only(NonNegativeInt at, byte changed)
    {
        byte[] lines = PlotBook.Empty.With("anna", Books.OneOfEachSort()).Lines();
        int whole = lines.Count(b => b == '\n');
        lines[(int)(at.Get * 7919L % lines.Length)] = changed;
        var book = Books.Read(lines);
        return book.Entries.Length >= whole - 2 && book.Entries.Length + book.SetAside.Length + book.Findings.Length >= whole - 1;
    }

    /// <summary>Entries of all sorts by several writers, among them corrections of earlier ones and struck ones.</summary>
    private static PlotBook Drawn((byte What, byte More)[] draws)
    {
        var sorts = Books.OneOfEachSort();
        var book = PlotBook.Empty;
        foreach (var (what, more) in draws.Take(25))
        {
            var entry = sorts[what % sorts.Length] with { On = Books.Day(2024, 1, 1).AddDays(more), Note = more % 3 == 0 ? "drawn, \"as is\"" : null };
            string? earlier = book.Entries.IsEmpty || more % 4 != 0 ? null : book.Entries[what % book.Entries.Length].Id;
            var next = earlier is not null && more % 8 == 0
                ? new StruckEntry { On = entry.On, Plot = entry.Plot, Corrects = earlier }
                : entry with { Corrects = earlier };
            book = book.With($"writer{more % Writers}", next);
        }

        return book;
    }
}
