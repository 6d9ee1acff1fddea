using System.Reflection;
using FsCheck.Xunit;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.House;

/// <summary>Checks against something outside the project are counted, so that they cannot quietly shrink.</summary>
public class CheckCountTests
{
    /// <summary>Rooms and the fewest rows of published, computed-apart or practice values their checks must hold.</summary>
    public static TheoryData<string, int> Rooms => new()
    {
        { "Soil,Nutrients", 60 }, { "Liming", 80 }, { "Fertilizers", 70 }, { "Seeds,Blends", 100 }, { "Land,Spreading", 150 }, { "Weather", 200 }, { "Records", 100 },
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
                Assert.Contains(row.Text("status"), new[] { "read", "secondary", "memory", "practice" });
            });
            Assert.Equal(table.Rows.Length, table.Rows.Select(r => r.Text("id")).Distinct().Count());
        }
    }

    /// <summary>What is worked apart is no print.</summary>
    [Fact]
    public void At_least_60_checks_of_the_weather_were_read_in_print() =>
        Assert.InRange(Files("Weather").SelectMany(f => WorkedExamples.Table(f).Rows).Count(r => r.Text("status") == "read" && !r.Text("institution").Contains("computed apart", StringComparison.Ordinal)), 60, int.MaxValue);

    [Fact]
    public void At_least_25_properties_are_tested() =>
        Assert.InRange(typeof(CheckCountTests).Assembly.GetTypes().SelectMany(t => t.GetMethods()).Count(m => m.GetCustomAttribute<PropertyAttribute>() is not null), 25, int.MaxValue);

    [Theory]
    [InlineData("Soil"), InlineData("Nutrients"), InlineData("Liming"), InlineData("Fertilizers"), InlineData("Seeds"), InlineData("Blends"), InlineData("Land"), InlineData("Spreading"), InlineData("Weather"), InlineData("Records"), InlineData("PlanFiles")]
    public void Every_room_is_tested_under_another_culture(string room) =>
        Assert.Contains(Directory.EnumerateFiles(Repository.PathOf($"tests/PlotAgronomy.Tests/{room}"), "*.cs", SearchOption.AllDirectories), f => File.ReadAllText(f).Contains("CultureScope", StringComparison.Ordinal));
}
