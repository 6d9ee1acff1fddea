using PlotAgronomy.Sample;
using PlotAgronomy.Tests.Weather;

namespace PlotAgronomy.Tests.SampleConsole;

/// <summary><c>when</c> and <c>calendar</c>, run in process.</summary>
public class TimingCommandTests
{
    private const string FallBlend = "fall-blend.json";

    private static (int Exit, string Out, string Error) Typed(string answers, params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        int exit = Program.Run(args, new ConsoleStreams { In = new StringReader(answers), Out = output, Error = error, Interactive = false });
        return (exit, output.ToString().ReplaceLineEndings("\n"), error.ToString().ReplaceLineEndings("\n"));
    }

    private static string Weather(string name) => Path.Combine(AppContext.BaseDirectory, "Weather", name);

    private static string InTheUsualPlace(string name)
    {
        string whole = File.ReadAllText(ConsoleTests.Data(name)).Replace("\"use\": \"browsed\"", "\"place\": \"North Carolina\", \"use\": \"browsed\"", StringComparison.Ordinal);
        string file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.json");
        File.WriteAllText(file, whole);
        return file;
    }

    [Fact]
    public void A_forecast_file_gives_the_answer_the_days_the_kinds_and_the_cost_of_waiting()
    {
        var (exit, sheet, error) = ConsoleTests.Run("when", ConsoleTests.Data(FallBlend), "--forecast", Weather("grid.json"), "--width", "120");
        Assert.Equal((0, ""), (exit, error));
        Assert.Contains("Answer", sheet, StringComparison.Ordinal);
        Assert.Contains("If sown on 2024-02-24", sheet, StringComparison.Ordinal);
        Assert.Contains("What a day of waiting costs", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("score", sheet, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("*", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Seven_lines_are_asked_at_most_and_a_wrong_one_is_asked_again()
    {
        string plan = InTheUsualPlace(FallBlend);
        try
        {
            var (exit, sheet, error) = Typed("60 0.4 78 55\nmany\n60% 0.4 78\n70, 0.3, 78, 55\n30 0.1 78 90\n30 0.1 78 55\n30 0.1 78 55\n30 0.1 78 55\n30 0.1 78 55\n30 0.1 78 55\n30 0.1 78 55\n", "when", plan, "--width", "120");
            Assert.Equal((0, ""), (exit, error));
            Assert.Equal(7 + 3, sheet.Split('\n').Count(l => l.StartsWith("2026-09-1", StringComparison.Ordinal) && l.EndsWith(':')));
            Assert.Contains("the low is above the high", sheet, StringComparison.Ordinal);
            Assert.Contains("four numbers are wanted", sheet, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(plan);
        }
    }

    [Fact]
    public void Nothing_typed_is_one_line_on_stderr()
    {
        string plan = InTheUsualPlace(FallBlend);
        try
        {
            var (exit, _, error) = Typed("\n", "when", plan);
            Assert.Equal(2, exit);
            Assert.Equal("no day of a forecast was typed\n", error);
        }
        finally
        {
            File.Delete(plan);
        }
    }

    private static readonly string SevenDays = string.Concat(Enumerable.Repeat("60 0.4 78 55\n", 7));

    [Fact]
    public void Without_a_place_nothing_is_typed_in_vain()
    {
        var (exit, asked, error) = Typed("\n" + SevenDays, "when", ConsoleTests.Data(FallBlend));
        Assert.Equal(2, exit);
        Assert.Equal("no place was told: name the state, or latitude and longitude\n", error);
        Assert.StartsWith("In which state does the plot lie, or at which latitude and longitude?", asked, StringComparison.Ordinal);
        Assert.DoesNotContain("Type the forecast", asked, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("North Carolina")]
    [InlineData("35.5 -79")]
    [InlineData("somewhere\n95 -79\n35.5, -79")]
    public void The_place_is_asked_before_the_seven_lines_and_again_when_it_cannot_be_read(string place)
    {
        var (exit, sheet, error) = Typed(place + "\n" + SevenDays, "when", ConsoleTests.Data(FallBlend), "--width", "120");
        Assert.Equal((0, ""), (exit, error));
        Assert.True(sheet.IndexOf("In which state", StringComparison.Ordinal) < sheet.IndexOf("Type the forecast", StringComparison.Ordinal));
        Assert.Contains("sow now or wait", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Whoever_names_the_place_in_the_plan_is_not_asked_for_it()
    {
        string plan = InTheUsualPlace(FallBlend);
        try
        {
            Assert.DoesNotContain("In which state does the plot lie", Typed(SevenDays, "when", plan).Out.Split("Ask first")[0], StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(plan);
        }
    }

    private static string Told(string answers, params string[] more)
    {
        string plan = InTheUsualPlace(FallBlend);
        try
        {
            return string.Join(' ', Typed(answers, ["when", plan, "--width", "100", .. more]).Out.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        }
        finally
        {
            File.Delete(plan);
        }
    }

    [Fact]
    public void In_December_the_answer_tells_when_the_season_begins_again()
    {
        string sheet = Told(string.Concat(Enumerable.Repeat("60 0.4 44 28\n", 7)), "--from", "2026-12-10");
        Assert.Contains("Wait: not on 2026-12-10.", sheet, StringComparison.Ordinal);
        Assert.Contains("It is not the season. Printed dates begin again: ", sheet, StringComparison.Ordinal);
        Assert.Contains("Austrian winter pea on 2027-09-01", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("no printed dates and no frost are known", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chance_whose_ends_are_alike_and_a_kind_that_is_left_out_are_named_once()
    {
        Assert.Contains("At least 0.5 in of rain within 7 days is only 0 % likely.", Told(string.Concat(Enumerable.Repeat("0 0 80 60\n", 7))), StringComparison.Ordinal);
        Assert.Contains("with care, without Ladino clover: the soil is too sour for it today.", Told(SevenDays), StringComparison.Ordinal);
    }

    [Fact]
    public void Days_to_a_frost_that_nobody_knows_take_no_room()
    {
        string sheet = Told(SevenDays);
        Assert.DoesNotContain("days to frost", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain(" verdic ", sheet, StringComparison.Ordinal);
    }

    /// <summary>The rain of the document begins on the 28th: the answer does not say first that no day is better.</summary>
    [Fact]
    public void The_day_just_ahead_of_the_rain_is_called_the_best()
    {
        var (_, sheet, _) = ConsoleTests.Run("when", ConsoleTests.Data(FallBlend), "--forecast", Weather("grid.json"), "--width", "200");
        Assert.Contains("Best just ahead of the rain, on 2024-02-27, the last day on which the ground can still be worked dry", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("No day that this forecast tells is better", sheet, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--zone", "Nowhere/Town", "knows no time zone")]
    [InlineData("--from", "next week", "expected a date")]
    [InlineData("--forecast", "no-such-file.json", "cannot read")]
    public void A_wrong_option_is_one_line_on_stderr(string option, string value, string words)
    {
        var (exit, output, error) = ConsoleTests.Run("when", ConsoleTests.Data(FallBlend), option, value);
        Assert.Equal((2, ""), (exit, output));
        Assert.Contains(words, Assert.Single(error.TrimEnd('\n').Split('\n')), StringComparison.Ordinal);
    }

    [Fact]
    public void A_forecast_that_breaks_its_format_names_file_line_and_field()
    {
        string file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.csv");
        File.WriteAllText(file, "date,rain\n2026-09-01,1\n");
        try
        {
            var (exit, _, error) = ConsoleTests.Run("when", ConsoleTests.Data(FallBlend), "--forecast", file);
            Assert.Equal(2, exit);
            Assert.Contains("line 1, field 'rain'", error, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public void Half_days_tell_no_amounts_and_the_question_says_what_is_wanted()
    {
        var (exit, _, error) = ConsoleTests.Run("when", ConsoleTests.Data(FallBlend), "--forecast", Weather("half-days.json"));
        Assert.Equal(2, exit);
        Assert.Contains("calendar-ask-forecast", error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_season_is_a_dated_list_with_reasons_and_sources()
    {
        var (exit, sheet, error) = ConsoleTests.Run("calendar", ConsoleTests.Data(FallBlend), "--width", "140");
        Assert.Equal((0, ""), (exit, error));
        Assert.Contains("The season, by the day each task is due", sheet, StringComparison.Ordinal);
        Assert.Contains("LIME-S17", sheet, StringComparison.Ordinal);
        Assert.Contains("calendar-ask-where", sheet, StringComparison.Ordinal);
    }

    /// <summary>Read back by a library of its own: whole days, an end after the start, names that differ and stay the same.</summary>
    [Fact]
    public void The_calendar_file_reads_back_and_is_the_same_every_time()
    {
        string[] files = [Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.ics"), Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.ics")];
        try
        {
            foreach (string file in files)
            {
                Assert.Equal(0, ConsoleTests.Run("calendar", ConsoleTests.Data(FallBlend), "--ics", file).Exit);
            }

            string text = File.ReadAllText(files[0]);
            Assert.Equal(text, File.ReadAllText(files[1]));
            var events = Ical.Net.Calendar.Load(text)!.Events;
            Assert.True(events.Count > 8);
            Assert.Equal(events.Count, events.Select(e => e.Uid).Distinct().Count());
            Assert.Contains(events, e => e.Uid == "fern-bottom-2026-sow-1@plot-agronomy");
            Assert.All(events, e => Assert.True(e.Start!.AsUtc < e.End!.AsUtc && !e.Start.HasTime, e.Uid));
            Assert.All(events, e => Assert.Equal(new DateTime(2026, 9, 12), e.DtStamp!.AsUtc.Date));
            Assert.All(text.Split("\r\n"), line => Assert.True(System.Text.Encoding.UTF8.GetByteCount(line) <= 75, line));
        }
        finally
        {
            Array.ForEach(files, File.Delete);
        }
    }

    private static string Without(string name, params string[] fields)
    {
        string whole = File.ReadAllText(ConsoleTests.Data(name));
        foreach (string field in fields)
        {
            whole = System.Text.RegularExpressions.Regex.Replace(whole, $"\\s*\"{field}\": \"[^\"]*\",?(?=\\s*\")", "");
        }

        string file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.json");
        File.WriteAllText(file, whole);
        return file;
    }

    /// <summary>Lime has its own date: it stands in the file, and one line says what does not.</summary>
    [Fact]
    public void Without_a_planting_date_the_calendar_file_holds_what_has_a_day_and_one_line_says_what_has_none()
    {
        string plan = Without(FallBlend, "plantingDate"), file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.ics");
        try
        {
            var (exit, _, error) = ConsoleTests.Run("calendar", plan, "--ics", file);
            Assert.Equal(0, exit);
            string line = Assert.Single(error.TrimEnd('\n').Split('\n'));
            Assert.StartsWith("not in the calendar file, for they have no day yet: ", line, StringComparison.Ordinal);
            Assert.Contains("; Till the last time (in the last week before sowing); ", line, StringComparison.Ordinal);
            Assert.EndsWith(" - put the planting date into the plan", line, StringComparison.Ordinal);
            var events = Ical.Net.Calendar.Load(File.ReadAllText(file))!.Events;
            Assert.Contains(events, e => e.Summary!.StartsWith("Spread the lime", StringComparison.Ordinal));
            Assert.DoesNotContain(events, e => e.Summary!.StartsWith("Sow ", StringComparison.Ordinal));
        }
        finally
        {
            File.Delete(plan);
            File.Delete(file);
        }
    }

    /// <summary>What is counted from the day on which it is really sown has none before it.</summary>
    [Fact]
    public void With_a_planting_date_too_the_line_says_what_waits_for_the_day_of_sowing()
    {
        string file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.ics");
        try
        {
            string error = ConsoleTests.Run("calendar", ConsoleTests.Data(FallBlend), "--ics", file).Error;
            Assert.Equal("not in the calendar file, for they have no day yet: Count the rain since sowing (2 weeks after sowing); Count the seedlings in several places (3 to 4 weeks after sowing)\n", error);
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public void A_season_without_any_day_writes_no_calendar_file_and_says_what_to_do()
    {
        string plan = Without(FallBlend, "plantingDate", "limeDate", "sampled"), file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.ics");
        try
        {
            var (exit, _, error) = ConsoleTests.Run("calendar", plan, "--ics", file);
            Assert.Equal((2, "no task of this season has a day yet, so no calendar was written: put the planting date into the plan\n"), (exit, error));
            Assert.False(File.Exists(file));
        }
        finally
        {
            File.Delete(plan);
        }
    }

    [Fact]
    public void The_stamp_of_the_calendar_file_may_be_given()
    {
        string file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.ics");
        try
        {
            Assert.Equal(0, ConsoleTests.Run("calendar", ConsoleTests.Data(FallBlend), "--ics", file, "--stamp", "2026-01-15").Exit);
            Assert.Contains("DTSTAMP:20260115T000000Z", File.ReadAllText(file), StringComparison.Ordinal);
            Assert.Equal(2, ConsoleTests.Run("calendar", ConsoleTests.Data(FallBlend), "--ics", file, "--stamp", "soon").Exit);
            Assert.Equal(2, ConsoleTests.Run("calendar", ConsoleTests.Data(FallBlend), "--ics", ConsoleTests.Data(FallBlend)).Exit);
        }
        finally
        {
            File.Delete(file);
        }
    }
}
