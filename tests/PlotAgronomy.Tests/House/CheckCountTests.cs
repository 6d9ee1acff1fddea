using System.Reflection;
using System.Text.RegularExpressions;
using FsCheck.Xunit;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.House;

/// <summary>Checks against something outside the project are counted, so that they cannot quietly shrink.</summary>
public partial class CheckCountTests
{
    /// <summary>Rooms and the fewest rows of published, computed-apart or practice values their checks must hold.</summary>
    public static TheoryData<string, int> Rooms => new()
    {
        { "Soil,Nutrients", 60 }, { "Liming", 80 }, { "Fertilizers", 70 }, { "Seeds,Blends", 100 }, { "Land,Spreading", 150 }, { "Weather,Calendar", 200 }, { "Records", 100 },
    };

    private static IEnumerable<string> Files(string room) => Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, room), "worked-*.csv");

    [Theory, MemberData(nameof(Rooms))]
    public void Each_room_keeps_its_independent_checks(string rooms, int fewest) =>
        Assert.InRange(rooms.Split(',').SelectMany(Files).Sum(f => WorkedExamples.Table(f).Rows.Length), fewest, int.MaxValue);

    [Theory, MemberData(nameof(Rooms))]
    public void Every_check_names_where_its_value_comes_from_and_how_close_it_must_be(string rooms, int fewest)
    {
        Assert.True(fewest > 0);
        foreach (string file in rooms.Split(',').SelectMany(Files))
        {
            var table = WorkedExamples.Table(file);
            Assert.Empty(WorkedExamples.RequiredColumns.Except(table.Header));
            Assert.All(table.Rows, row =>
            {
                Assert.NotEmpty(row.Text("title"));
                Assert.NotEmpty(row.Text("institution"));
                Assert.Contains(row.Text("status"), new[] { "read", "secondary", "computed", "memory", "practice" });
            });
            Assert.Equal(table.Rows.Length, table.Rows.Select(r => r.Text("id")).Distinct().Count());
        }
    }

    private static IEnumerable<(CsvTable Table, CsvRow Row)> Timing =>
        from room in new[] { "Weather", "Calendar" }
        from file in Files(room)
        let table = WorkedExamples.Table(file)
        from row in table.Rows
        select (table, row);

    private static bool IsWorkedApart(CsvRow row) => row.Text("institution").Contains("computed apart", StringComparison.Ordinal);

    /// <summary>A numbered example is one check, whatever it gives on the way and wherever it was read; another printed value is one; and a series
    /// that was worked apart is one, however many rows it has: its topic is its quantity.</summary>
    private static (string, string, string) Check(CsvRow row, bool hasLocator)
    {
        string place = $"{row.Text("title")}, {(hasLocator ? row.TextOrNull("locator") : null)}";
        return IsWorkedApart(row) ? ("worked apart", row.Text("topic"), "")
            : NumberedExample().Match(place) is { Success: true, Value: var example } ? ("numbered", example, "")
            : (row.Text("title"), row.Text("topic"), row.TextOrNull("inputs") ?? "");
    }

    [GeneratedRegex("example [0-9]+")]
    private static partial Regex NumberedExample();

    private static int Independent(IEnumerable<(CsvTable Table, CsvRow Row)> rows) =>
        rows.Select(r => Check(r.Row, r.Table.Header.Contains("locator"))).Distinct().Count();

    [Fact]
    public void At_least_200_checks_of_weather_and_calendar_are_independent() =>
        Assert.InRange(Independent(Timing), 200, int.MaxValue);

    /// <summary>What is worked apart is no print, and what is from memory was not seen.</summary>
    [Fact]
    public void At_least_60_checks_of_weather_and_calendar_were_seen_in_print() =>
        Assert.InRange(Independent(Timing.Where(r => r.Row.Text("status") is "read" or "secondary")), 60, int.MaxValue);

    [Fact]
    public void A_series_a_numbered_example_and_a_value_read_twice_are_one_check_each()
    {
        const string Text = """
            id,topic,inputs,title,institution,locator
            a,ra,1,worked apart,"arithmetic, computed apart",
            b,ra,2,worked apart,"arithmetic, computed apart",
            c,ra,1,a paper,someone,table 2: 1
            d,ra,1,a paper,someone,table 2: 1
            e,ra,2,a paper,someone,table 2: 2
            f,et,1,"a paper, example 17",someone,
            g,rn,1,a paper,someone,example 17
            h,rn,1,a paper,someone,example 18
            """;
        var table = CsvTable.Parse("checks", Text);
        Assert.Equal(1 + 2 + 2, Independent(table.Rows.Select(r => (table, r))));
    }

    [Fact]
    public void At_least_25_properties_are_tested() =>
        Assert.InRange(typeof(CheckCountTests).Assembly.GetTypes().SelectMany(t => t.GetMethods()).Count(m => m.GetCustomAttribute<PropertyAttribute>() is not null), 25, int.MaxValue);

    [Theory]
    [InlineData("Soil"), InlineData("Nutrients"), InlineData("Liming"), InlineData("Fertilizers"), InlineData("Seeds"), InlineData("Blends"), InlineData("Land"), InlineData("Spreading"), InlineData("Weather"), InlineData("Records"), InlineData("PlanFiles")]
    public void Every_room_is_tested_under_another_culture(string room) =>
        Assert.Contains(Directory.EnumerateFiles(Repository.PathOf($"tests/PlotAgronomy.Tests/{room}"), "*.cs", SearchOption.AllDirectories), f => File.ReadAllText(f).Contains("CultureScope", StringComparison.Ordinal));
}
