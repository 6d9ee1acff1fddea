using System.Diagnostics;
using System.Text;
using PlotAgronomy.Reference;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Tests.Weather;

/// <summary>Whatever is handed in ends in an answer or in one error that names the file and the place.</summary>
public class HostileFileTests
{
    private const string Entry = """{"validTime":"2024-02-23T12:00:00+00:00/PT6H","value":3}""";

    public static TheoryData<string, string, string> Grids => new()
    {
        { "not an object", "[1,2]", "expected an object" },
        { "nothing", "", "not valid JSON" },
        { "no update time", "{}", "'updateTime' is missing" },
        { "clock without offset", """{"updateTime":"2024-02-23T12:00:00"}""", "updateTime" },
        { "unknown unit", Layer("wmoUnit:furlong", Entry), "quantitativePrecipitation.uom" },
        { "unit of another quantity", Layer("wmoUnit:degC", Entry), "unknown unit" },
        { "no unit", Layer(null, Entry), "'uom' is missing" },
        { "text for a number", Layer("wmoUnit:mm", Entry.Replace("3}", "\"3\"}", StringComparison.Ordinal)), "quantitativePrecipitation.values[0].value': expected a number" },
        { "a number too great", Layer("wmoUnit:mm", Entry.Replace("3}", "1e999}", StringComparison.Ordinal)), "values[0].value" },
        { "negative rain", Layer("wmoUnit:mm", Entry.Replace("3}", "-1}", StringComparison.Ordinal)), "-1 mm is not between" },
        { "reversed interval", Layer("wmoUnit:mm", """{"validTime":"2024-02-23T12:00:00Z/2024-02-23T06:00:00Z","value":3}"""), "ends before it starts" },
        { "the same time twice", Layer("wmoUnit:mm", Entry, Entry), "overlaps the one in line" },
        { "half a character", """{"updateTime":"\ud800"}""", "half a character" },
        { "a member twice", """{"updateTime":"2024-02-23T12:00:00Z","updateTime":1}""", "stands twice" },
        { "values are no list", """{"updateTime":"2024-02-23T12:00:00Z","temperature":{"uom":"wmoUnit:degC","values":{}}}""", "expected a list" },
        { "over a century", Layer("wmoUnit:mm", Entry, Entry.Replace("2024", "2124", StringComparison.Ordinal)), "more than 60 days" },
    };

    [Theory, MemberData(nameof(Grids))]
    public void A_wrong_grid_is_refused_with_its_place(string what, string text, string words)
    {
        var problem = Assert.Throws<DataFormatException>(() => WeatherForecast.ReadGrid(text, "grid of a test"));
        Assert.True(problem.Message.StartsWith("grid of a test, line 1", StringComparison.Ordinal), what);
        Assert.Contains(words, problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_null_is_not_known_and_not_nothing()
    {
        var forecast = WeatherForecast.ReadGrid(Layer("wmoUnit:mm", Entry.Replace("3}", "null}", StringComparison.Ordinal)), "f");
        Assert.Empty(forecast.Blocks);
    }

    /// <summary>A chance of the 20th and rain of the 23rd: of the days between nothing is known, and nothing is made up.</summary>
    [Fact]
    public void A_gap_between_two_layers_is_no_block()
    {
        const string Chance =
            """
            "probabilityOfPrecipitation":{"uom":"wmoUnit:percent","values":[{"validTime":"2024-02-20T12:00:00Z/PT1H","value":60}]}
            """;
        string grid = Layer("wmoUnit:mm", Entry);
        var forecast = WeatherForecast.ReadGrid($"{grid.TrimEnd()[..^1]},{Chance}}}", "f");
        Assert.Equal([20, 23], forecast.Blocks.Select(b => b.Slot.Start.Day));
        Assert.Equal(new double?[] { 0.6, null }, forecast.Blocks.Select(b => b.Chance));
        Assert.Equal([false, true], forecast.Blocks.Select(b => b.Millimeters is not null));
    }

    [Fact]
    public void A_document_cut_off_anywhere_is_refused_and_names_its_line()
    {
        string whole = WeatherFiles.Text("half-days.json");
        for (int length = 0; length < whole.TrimEnd().Length; length += 97)
        {
            var problem = Assert.Throws<DataFormatException>(() => WeatherForecast.ReadPeriods(whole[..length], "cut.json"));
            Assert.StartsWith("cut.json, line ", problem.Message, StringComparison.Ordinal);
        }
    }

    /// <summary>Cut within a line; where a document of the service ends with its last bracket nothing of it is read.</summary>
    [Fact]
    public void A_grid_and_a_document_of_hours_cut_off_anywhere_are_refused()
    {
        foreach (string name in new[] { "grid.json", "hours.json" })
        {
            string whole = WeatherFiles.Text(name).TrimEnd();
            for (int length = 1; length < whole.Length; length += 9973)
            {
                var problem = Assert.Throws<DataFormatException>(() => WeatherForecast.Read(whole[..length], name, WeatherFiles.Central));
                Assert.StartsWith($"{name}, line ", problem.Message, StringComparison.Ordinal);
            }
        }
    }

    /// <summary>The last row is cut within its date or its first number.</summary>
    [Fact]
    public void A_table_cut_off_within_a_row_is_refused_with_its_line()
    {
        const string Whole = "date,chance_pct,rain_in,high_f,low_f\n2026-09-01,60,0.4,78,55\n2026-09-02,60,0.4,78,55\n";
        foreach (int cut in new[] { 3, 12, 18 })
        {
            int row = Whole.IndexOf("2026-09-02", StringComparison.Ordinal);
            var problem = Assert.Throws<DataFormatException>(() => WeatherForecast.ReadTable(Whole[..(row + cut)], "cut.csv", WeatherFiles.Central));
            Assert.StartsWith("cut.csv, line 3", problem.Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("2024-02-23T18:00:00-06:00", "2024-02-23T06:00:00-06:00", "ends before it starts")]
    [InlineData("2024-02-23T06:00:00-06:00", "2024-02-24T18:00:00-06:00", "overlaps the one in line")]
    public void Periods_that_are_reversed_or_overlap_are_refused_with_their_place(string start, string end, string words)
    {
        static string Period(string from, string to) =>
            $$$"""{"number":1,"name":"x","startTime":"{{{from}}}","endTime":"{{{to}}}","isDaytime":true,"temperature":50,"temperatureUnit":"F","probabilityOfPrecipitation":{"unitCode":"wmoUnit:percent","value":40}}""";
        string text = $$$"""{"properties":{"updateTime":"2024-02-23T12:00:00Z","periods":[{{{Period(start, end)}}},{{{Period("2024-02-24T06:00:00-06:00", "2024-02-24T18:00:00-06:00")}}}]}}""";
        var problem = Assert.Throws<DataFormatException>(() => WeatherForecast.Read(text, "periods of a test", WeatherFiles.Central));
        Assert.StartsWith("periods of a test, line 1", problem.Message, StringComparison.Ordinal);
        Assert.Contains(words, problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{\"properties\":")]
    public void Deep_nesting_is_refused(string open) =>
        Assert.Contains("not valid JSON", Assert.Throws<DataFormatException>(() => WeatherForecast.ReadGrid(string.Concat(Enumerable.Repeat(open, 5000)), "f")).Message, StringComparison.Ordinal);

    /// <summary>50 MB of text, of a stream, of values and of lines: each in bounded time and memory.</summary>
    [Theory]
    [InlineData("text")]
    [InlineData("stream")]
    [InlineData("values")]
    [InlineData("lines")]
    [InlineData("commas")]
    public void A_giant_is_refused_in_bounded_time_and_memory(string what)
    {
        const int Giant = 50_000_000;
        string text = what is "text" or "stream" ? new string(' ', what == "text" ? Giant : 0) : string.Concat(Enumerable.Repeat(what == "values" ? "0,\n" : what == "lines" ? "x\n" : ",,", 3_000_000));
        long before = GC.GetAllocatedBytesForCurrentThread();
        var watch = Stopwatch.StartNew();
        var problem = what switch
        {
            "text" => Assert.Throws<DataFormatException>(() => WeatherForecast.ReadGrid(text, "giant")),
            "stream" => Assert.Throws<DataFormatException>(() => WeatherForecast.ReadGrid(new MemoryStream(new byte[Giant]), "giant")),
            "values" => Assert.Throws<DataFormatException>(() => WeatherForecast.ReadGrid($"[{text}", "giant")),
            "lines" => Assert.Throws<DataFormatException>(() => WeatherHistory.ReadStation(text, "giant")),
            _ => Assert.Throws<DataFormatException>(() => WeatherHistory.ReadTable(text, "giant")),
        };
        Assert.StartsWith("giant, line ", problem.Message, StringComparison.Ordinal);
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 20);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 800_000_000);
    }

    /// <summary>As many hours as are read at all: twenty years are summed to days in seconds.</summary>
    [Fact]
    public void The_longest_table_of_hours_is_read_in_bounded_time()
    {
        var start = WeatherFiles.Utc(2000, 1, 1, 5);
        string table = "time,rain_mm,temperature_c,wind_mph\n" + string.Concat(Enumerable.Range(0, 190_000).Select(i => FormattableString.Invariant($"{start.AddHours(i):yyyy-MM-dd'T'HH:mm:sszzz},0.5,{i % 24},5\n")));
        var watch = Stopwatch.StartNew();
        var history = WeatherHistory.ReadTable(table, "long", WeatherFiles.Eastern);
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 20);
        Assert.Equal(12, history.Days[100].Rain!.Value.Millimeters, 9);
    }

    [Fact]
    public void A_stream_that_is_no_text_is_refused() =>
        Assert.Contains("UTF-8", Assert.Throws<DataFormatException>(() => WeatherHistory.ReadTable(new MemoryStream([0xFF, 0xFE, 0x00]), "f")).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("date,rain\n2026-09-01,1\n", "line 1, field 'rain': the unit must stand in the header")]
    [InlineData("date,rain_furlong\n2026-09-01,1\n", "field 'rain_furlong'")]
    [InlineData("date,luck_pct\n2026-09-01,1\n", "unknown column")]
    [InlineData("date,rain_mm\n2026-13-01,1\n", "line 2, field 'date'")]
    [InlineData("date,rain_mm\n2026-09-01,1\n2026-09-01,2\n", "line 3, field 'date': the date stands twice")]
    [InlineData("date,rain_mm\n2026-09-01,much\n", "line 2, field 'rain_mm': expected a number")]
    [InlineData("date,high_c,low_c\n2026-09-01,10,20\n", "the low of 20 C is above the high of 10 C")]
    [InlineData("date,rain_mm\n2026-09-01,1,2\n", "expected 2 fields, found 3")]
    [InlineData("rain_mm\n1\n", "expected a column 'date' or 'time'")]
    [InlineData("time,rain_mm\n2026-09-01T00:00,1\n", "hand in the zone")]
    [InlineData("date,temperature_c\n2026-09-01,1\n", "belongs to a table by hours")]
    [InlineData("9999,rain_mm\n2026-09-01,1\n", "expected a column")]
    public void A_wrong_table_is_refused_with_its_place(string text, string words) =>
        Assert.Contains(words, Assert.Throws<DataFormatException>(() => WeatherHistory.ReadTable(text, "f.csv")).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("S,20130901,PRCP,5,,,\n", "expected 8 fields, found 7")]
    [InlineData("S,20130901,PRCP,wet,,,,\n", "field 'PRCP': expected a whole number")]
    [InlineData("S,20130901,PRCP,5,,,,\nT,20130901,TMAX,5,,,,\n", "more than one station")]
    [InlineData("S,20130901,PRCP,5,,,,\nS,20130901,PRCP,6,,,,\n", "line 2, field 'PRCP': the value of this day stands twice")]
    [InlineData("S,20130901,TMAX,9000,,,,\n", "900 C is not between")]
    [InlineData("S,00010101,TMAX,90,,,,\n", "expected a date")]
    [InlineData("just words\n", "month's line of 269 characters")]
    [InlineData("\n\n", "holds no rain and no temperature")]
    public void A_wrong_station_file_is_refused_with_its_place(string text, string words) =>
        Assert.Contains(words, Assert.Throws<DataFormatException>(() => WeatherHistory.ReadStation(text, "s.csv")).Message, StringComparison.Ordinal);

    private static string Layer(string? unit, params string[] entries)
    {
        var text = new StringBuilder("""{"updateTime":"2024-02-23T12:00:00Z","quantitativePrecipitation":{""");
        text.Append(unit is null ? "" : $"\"uom\":\"{unit}\",").Append("\"values\":[").AppendJoin(',', entries).Append("]}}");
        return text.ToString();
    }
}
