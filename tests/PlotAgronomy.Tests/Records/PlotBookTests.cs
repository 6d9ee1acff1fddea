using System.Text;
using PlotAgronomy.Records;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Records;

public class PlotBookTests
{
    [Fact]
    public void Every_sort_of_entry_comes_back_from_its_line_as_it_was()
    {
        var book = Books.Full();
        var read = Books.Read(book.Lines());
        Assert.Empty(read.Findings);
        Assert.Equal(book.Text(), read.Text());
        Assert.Equal(EntryKinds.Words, book.Entries.Select(e => e.What).Distinct().Order(StringComparer.Ordinal));
        var lime = Assert.Single(read.Current.OfType<LimeEntry>());
        Assert.Equal(15.5 * 40 + 120.2, lime.Weight.Pounds, 1e-9);
        Assert.Equal(0.91 * 1.003296703, lime.Material.CcePercent!.Value / 100, 1e-6);
    }

    [Theory, MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void Lines_and_tables_are_alike_under_another_culture(string culture)
    {
        string lines = Books.Full().Text();
        string table = Books.Full().ToCsv();
        using (new CultureScope(culture))
        {
            Assert.Equal(lines, Books.Full().Text());
            Assert.Equal(table, PlotBook.FromCsv(table, "t.csv", "anna").ToCsv());
            Assert.Equal("2024-04-02 north: lime", Books.Full().Current.OfType<LimeEntry>().Single().ToString());
        }
    }

    [Fact]
    public void A_line_is_open_json_that_a_person_can_read()
    {
        string line = Books.Full().Text().Split('\n').Single(l => l.Contains("\"lime\",\"material\"", StringComparison.Ordinal));
        Assert.StartsWith("{\"v\":1,\"id\":\"anna-3\",\"on\":\"2024-04-02\",\"plot\":\"north\",\"what\":\"lime\",\"material\":\"pelleted lime\"", line, StringComparison.Ordinal);
        Assert.Contains("{\"bags\":\"15.5\",\"bag\":\"40 lb\",\"area\":\"0.4 ac\"}", line, StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_out_and_in_again_changes_nothing()
    {
        var book = Books.Full();
        var back = PlotBook.FromCsv(book.ToCsv(), "t.csv", "carl");
        Assert.Equal(book.Text(), back.Text());
        Assert.Equal(book.ToCsv(), back.ToCsv());
    }

    [Fact]
    public void A_table_of_ones_own_needs_no_names_of_entries()
    {
        var book = PlotBook.FromCsv("what,on,plot,rain\nrain,2025-05-01,north,0.5 in\nrain,2025-05-02,north,0.25 in\n", "rain.csv", "carl");
        Assert.Equal(["carl-1", "carl-2"], book.Entries.Select(e => e.Id));
        Assert.Equal(0.75, book.Current.OfType<RainEntry>().Sum(r => r.Amount.Inches), 1e-12);
    }

    [Theory]
    [InlineData("what,on,plot,rain\nrain,2025-05-01,north,5 mm\n", "rain")]
    [InlineData("what,on,plot,rain\nrain,2025-13-01,north,5 in\n", "on")]
    [InlineData("what,on,plot,rain\nhail,2025-05-01,north,5 in\n", "what")]
    [InlineData("what,on,plot,rain,wind\nrain,2025-05-01,north,5 in,3\n", "wind")]
    [InlineData("what,on,plot,rain\nrain,2025-05-01,north,-5 in\n", null)]
    [InlineData("what,on,plot,rain\nrain,2025-05-01,north,5 in\nrain,,north,1 in\n", "what")]
    public void A_table_with_a_mistake_is_refused_whole_with_its_place(string text, string? field)
    {
        var thrown = Assert.Throws<DataFormatException>(() => PlotBook.FromCsv(text, "rain.csv", "carl"));
        Assert.Equal(field, thrown.Field);
        Assert.StartsWith("rain.csv, line", thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_correction_takes_the_place_of_what_it_names_and_nothing_else()
    {
        var before = PlotBook.Empty.With("anna", Books.OneOfEachSort());
        var after = before.With("ben", new RainEntry { On = Books.Day(2024, 9, 8), Plot = Books.North, Amount = Length.FromInches(0.35), Corrects = "anna-6" });
        Assert.Equal(before.Current.Where(e => e.Id != "anna-6"), after.Current.Where(e => e.Id != "ben-1"));
        Assert.Equal(0.35, Assert.Single(after.Current.OfType<RainEntry>()).Amount.Inches);
        Assert.Equal(before.Entries.Length + 1, after.Entries.Length);
    }

    [Fact]
    public void A_correction_of_a_correction_holds_and_a_struck_entry_is_out()
    {
        var rain = new RainEntry { On = Books.Day(2024, 9, 8), Plot = Books.North, Amount = Length.FromInches(1) };
        var book = PlotBook.Empty.With("a", rain).With("a", rain with { Corrects = "a-1" }).With("a", rain with { Corrects = "a-2", Days = 3 });
        Assert.Equal(3, Assert.Single(book.Current.OfType<RainEntry>()).Days);
        Assert.Empty(book.With("a", new StruckEntry { On = rain.On, Plot = rain.Plot, Corrects = "a-3" }).Current);
        Assert.Empty(book.Findings);
    }

    [Fact]
    public void Two_corrections_of_one_entry_are_reported_and_one_holds_whatever_came_first()
    {
        var rain = new RainEntry { On = Books.Day(2024, 9, 8), Plot = Books.North, Amount = Length.FromInches(1) };
        var first = PlotBook.Empty.With("a", rain);
        var one = first.With("b", rain with { Corrects = "a-1", Days = 2 });
        var two = first.With("c", rain with { Corrects = "a-1", Days = 3 });
        foreach (var book in new[] { one.With(two), two.With(one) })
        {
            Assert.Equal("record-corrected-twice", Assert.Single(book.Findings).Code);
            Assert.Equal(3, Assert.Single(book.Current.OfType<RainEntry>()).Days);
        }
    }

    [Theory]
    [InlineData("a-9")]
    [InlineData("a-1")]
    public void A_correction_of_nothing_or_of_itself_is_reported_and_not_counted(string corrects)
    {
        var book = PlotBook.Empty.With("a", new NoteEntry { On = Books.Day(2024, 9, 8), Plot = Books.North, Corrects = corrects });
        Assert.Empty(book.Current);
        Assert.Equal("record-corrects-nothing", Assert.Single(book.Findings).Code);
    }

    [Fact]
    public void Two_entries_of_one_name_are_reported_and_a_copied_file_is_not()
    {
        var one = PlotBook.Empty.With("a", new NoteEntry { On = Books.Day(2024, 9, 8), Plot = Books.North, Note = "one" });
        var two = PlotBook.Empty.With("a", new NoteEntry { On = Books.Day(2024, 9, 8), Plot = Books.North, Note = "two" });
        Assert.Equal("record-id-twice", Assert.Single(one.With(two).Findings).Code);
        Assert.Equal(one.With(two).State(), two.With(one).State());
        Assert.Empty(one.With(Books.Read(one.Lines())).Findings);
    }

    [Fact]
    public void A_line_of_a_newer_version_or_with_an_unknown_field_is_set_aside_by_name()
    {
        string good = Books.Full().Text();
        string newer = "{\"v\":2,\"id\":\"z-1\",\"on\":\"2024-01-01\",\"plot\":\"north\",\"what\":\"note\"}";
        string unknown = "{\"v\":1,\"id\":\"z-2\",\"on\":\"2024-01-01\",\"plot\":\"north\",\"what\":\"note\",\"wind\":\"3\"}";
        var book = Books.Read(Encoding.UTF8.GetBytes($"{newer}\n{good}{unknown}\n"));
        Assert.Equal([newer, unknown], book.SetAside);
        Assert.All(book.Findings, f => Assert.Equal("record-line-set-aside", f.Code));
        Assert.Contains("line 1, field 'v'", book.Findings[0].Text, StringComparison.Ordinal);
        Assert.Equal(Books.Full().State(), book.State());
    }

    [Theory]
    [InlineData("{\"v\":1,\"v\":1,\"id\":\"z-1\",\"id\":\"z-2\",\"on\":\"2024-01-01\",\"plot\":\"p\",\"what\":\"note\"}", "id")]
    [InlineData("{\"id\":\"z-1\",\"on\":\"2024-01-01\",\"plot\":\"p\",\"what\":\"note\"}", "v")]
    [InlineData("{\"v\":\"1\",\"id\":\"z-1\",\"on\":\"2024-01-01\",\"plot\":\"p\",\"what\":\"note\"}", "v")]
    [InlineData("{\"v\":1,\"on\":\"2024-01-01\",\"plot\":\"p\",\"what\":\"note\"}", "id")]
    [InlineData("{\"v\":1,\"id\":\"z-1\",\"on\":\"2024-01-01\",\"plot\":\" \",\"what\":\"note\"}", "plot")]
    [InlineData("{\"v\":1,\"id\":\"z-1\",\"on\":\"2024-01-01\",\"plot\":7,\"what\":\"note\"}", "plot")]
    [InlineData("{\"v\":1,\"id\":\"z-1\",\"on\":\"2024-01-01\",\"plot\":\"p\",\"what\":\"note\",\"parts\":[{\"bags\":\"2\"}]}", "bags")]
    [InlineData("{\"v\":1,\"id\":\"z-1\",\"on\":\"2024-01-01\",\"plot\":\"p\",\"what\":\"note\",\"parts\":[[[[[[]]]]]]}", "")]
    [InlineData("{\"v\":1,\"id\":\"z-1\",\"on\":\"2024-01-01\",\"plot\":\"p\",\"what\":\"count\",\"hoop\":\"1 ft2\",\"plants\":\"3;-1\"}", "plants")]
    [InlineData("{\"v\":1,\"id\":\"z-1\",\"on\":\"2024-01-01\",\"plot\":\"p\",\"what\":\"count\",\"hoop\":\"1e400 ft2\",\"plants\":\"3\"}", "hoop")]
    [InlineData("{\"v\":1,\"id\":\"z-1\",\"on\":\"2024-01-01\",\"plot\":\"p\",\"what\":\"browse\",\"kind\":\"no such kind\",\"plants-by-class\":\"1;1;1;1;1;1\"}", "kind")]
    public void A_hostile_line_is_set_aside_with_its_field(string line, string field)
    {
        var book = Books.Read(Encoding.UTF8.GetBytes(line + "\n"));
        Assert.Empty(book.Current);
        string place = field.Length > 0 ? $"book, line 1, field '{field}'" : "book, line 1: is no line of JSON";
        Assert.Contains(place, Assert.Single(book.Findings).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{\"v\":1,\"id\":\"z-1\",\"on\":\"2024-01-01\",\"plot\":\"\\uD800\",\"what\":\"note\"}")]
    [InlineData("{\"v\":1,\"id\":\"z-1\",\"on\":\"2024-01-01\",\"\\uD800\":\"p\",\"what\":\"note\"}")]
    public void Half_a_character_is_set_aside(string line) => Assert.Equal([line], Books.Read(Encoding.UTF8.GetBytes(line + "\n")).SetAside);

    [Fact]
    public void A_correction_is_made_of_the_entry_it_takes_the_place_of()
    {
        var book = PlotBook.Empty.With("anna", Books.OneOfEachSort());
        var lime = book.Current.OfType<LimeEntry>().Single() with { IsWorkedIn = false };
        var after = book.With("anna", lime.InPlaceOf(lime.Id!));
        Assert.False(Assert.Single(after.Current.OfType<LimeEntry>()).IsWorkedIn);
        Assert.Throws<ArgumentException>(() => book.With("anna", lime));
    }

    [Theory]
    [InlineData("")]
    [InlineData("anna")]
    [InlineData("anna-0")]
    [InlineData("anna-01")]
    [InlineData("an na-1")]
    [InlineData("../x-1")]
    public void The_name_of_an_entry_is_a_writer_and_a_number(string name) =>
        Assert.ThrowsAny<ArgumentException>(() => new NoteEntry { On = Books.Day(2024, 1, 1), Plot = "p", Corrects = name });
}
