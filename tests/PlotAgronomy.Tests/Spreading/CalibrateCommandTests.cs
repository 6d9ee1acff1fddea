using System.CommandLine;
using PlotAgronomy.Sample;
using PlotAgronomy.Sample.Commands;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Spreading;

public class CalibrateCommandTests
{
    private static readonly string[] Catch = ["--rate", "8 lb/ac", "--swath", "15 ft", "--caught", "0.4 lb", "--catch-time", "30 s", "--pace-time", "22.7272727 s"];

    [Fact]
    public void A_timed_catch_from_arguments_gives_pace_and_error()
    {
        // Hand algebra: 0.8 lb/min at 3 mph and 15 ft is 8.8 lb/ac; 0.7273 lb/min is needed; or 3.3 mph, 20.66 s per 100 ft.
        var (code, output, errors) = Run("", [.. Catch, "--scale-error", "0.008 lb", "--time-error", "0.6 s", "--material", "clover"]);
        Assert.Equal("", errors);
        Assert.Equal(0, code);
        Assert.Contains("clover: 8 lb/ac wanted, passes 15 ft apart", output, StringComparison.Ordinal);
        Assert.Contains("8.8 lb/ac, one run; 0.8 lb/min", output, StringComparison.Ordinal);
        Assert.Contains("0.727 lb/min is needed at this pace", output, StringComparison.Ordinal);
        Assert.Contains("22.7 s per 100 ft (3 mph)", output, StringComparison.Ordinal);
        Assert.Contains("20.7 s per 100 ft (3.3 mph)", output, StringComparison.Ordinal);
        // 2 % of weight and 2 % of time: 2.83 %.
        Assert.Contains("+-2.8 % of the rate", output, StringComparison.Ordinal);
        Assert.Contains("spread-few-runs", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Three_runs_over_a_course_and_a_gate_table_give_the_gate()
    {
        // 0.55 lb over 200 x 15 ft is 7.986 lb/ac at 3 mph: 0.726 lb/min against 0.7273 needed.
        var (code, output, errors) = Run("", "--rate", "8 lb/ac", "--swath", "15 ft", "--course", "200 ft", "--course-time", "45.4545454 s",
            "--used", "0.55 lb", "--used", "0.54 lb", "--used", "0.56 lb", "--gate", "2=0.5 lb/min", "--gate", "3=1 lb/min", "--plot", "0.25 ac");
        Assert.Equal("", errors);
        Assert.Equal(0, code);
        Assert.Contains("mean of 3 runs that spread over 3.6 %", output, StringComparison.Ordinal);
        Assert.Contains("accepted: the runs agree and are 0.2 % below the rate wanted", output, StringComparison.Ordinal);
        // 8 lb/ac on 3000 ft2.
        Assert.Contains("0.551 lb (8.82 oz, 250 g) in 200 ft, where 0.55 lb", output, StringComparison.Ordinal);
        // Straight line between two points: 2 + 0.2273 / 0.5.
        Assert.Contains("2.45; 0.727 lb/min is needed", output, StringComparison.Ordinal);
        Assert.Contains("load 2 lb, walk 726 ft in 2.7 min", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_person_with_a_bucket_is_asked_for_everything()
    {
        string answers = string.Join('\n', "clover", "8 lb/ac", "15 ft", "bucket", "30 s", "0.4 lb, 0.4 lb, 0.4 lb;", "22.7272727 s", "3", "2=0.5 lb/min; 3=0.8 lb/min; 4=1.4 lb/min", "0.1 oz", "", "", "1.5 ft", "0.25 ac") + "\n";
        var (code, output, errors) = Run(answers);
        Assert.Equal("", errors);
        Assert.Equal(0, code);
        Assert.Contains("What rate do you want on the ground", output, StringComparison.Ordinal);
        Assert.Contains("the runs agree, but are 10 % above the rate wanted", output, StringComparison.Ordinal);
        Assert.Contains("the largest measuring error being the swath", output, StringComparison.Ordinal);
        Assert.Contains("20.7 s per 100 ft", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Pace_scale_and_swath_add_up_in_the_expected_error()
    {
        // Weight 1 %, pace 1.136 of 22.727 s (5 %), swath 1.5 of 15 ft (10 %): root of 1 + 25 + 100.
        var (_, output, _) = Run("", "--rate", "8 lb/ac", "--swath", "15 ft", "--course", "200 ft", "--course-time", "45.4545454 s", "--used", "0.5 lb",
            "--scale-error", "0.005 lb", "--pace-error", "1.13636 s", "--swath-error", "1.5 ft");
        Assert.Contains("+-11.2 % of the rate, the largest measuring error being the swath", output, StringComparison.Ordinal);
    }

    [Fact]
    public void An_answer_that_cannot_be_read_is_asked_again()
    {
        string answers = string.Join('\n', "", "8", "8 lb/ac", "15 ft", "wheel", "run", "200 ft", "46 s", "0.55 lb", "", "", "", "", "", "", "") + "\n";
        var (code, output, _) = Run(answers);
        Assert.Equal(0, code);
        Assert.Contains("no unit in '8'", output, StringComparison.Ordinal);
        Assert.Contains("expected 'run' or 'catch', found 'wheel'", output, StringComparison.Ordinal);
        Assert.Contains("seed: 8 lb/ac wanted", output, StringComparison.Ordinal);
        Assert.Contains("not known: one run, and no measuring error was given", output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_contradicts_itself_is_asked_again_before_the_sum()
    {
        string answers = string.Join('\n', "", "8 lb/ac", "15 ft", "catch", "0 s", "30 s", "0.4 lb", "23 s", "3", "3=0.8 lb/min", "1=2 lb/min; 2=1.5 lb/min", "2=0.5 lb/min", "", "", "", "", "") + "\n";
        var (code, output, errors) = Run(answers);
        Assert.Equal("", errors);
        Assert.Equal(0, code);
        Assert.Contains("'0 s' is not above 0", output, StringComparison.Ordinal);
        Assert.Contains("  A gate table needs at least two different settings.", output, StringComparison.Ordinal);
        Assert.Contains("falls more than once", output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_runs_themselves_are_a_second_point_of_the_gate()
    {
        // 0.8 lb/min at setting 3 and 0.5 at 2: 0.7273 lb/min lies at 2 + 0.2273 / 0.3.
        var (code, output, _) = Run("", [.. Catch, "--setting", "3", "--gate", "2=0.5 lb/min"]);
        Assert.Equal(0, code);
        Assert.Contains("2.76; 0.727 lb/min is needed", output, StringComparison.Ordinal);
        Assert.Contains("with the gate left at 3", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rate_in_the_wrong_unit_is_questioned()
    {
        var (_, output, _) = Run("", [.. Catch.Skip(2), "--rate", "8 lb/1000 ft2"]);
        Assert.Contains("spread-far-off", output, StringComparison.Ordinal);
        Assert.DoesNotContain("spread-far-off", Run("", Catch).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_options_leave_out_is_asked_for()
    {
        var (code, output, _) = Run("15 ft\n", "--rate", "8 lb/ac", "--caught", "0.4 lb", "--catch-time", "30 s", "--pace-time", "23 s");
        Assert.Equal(0, code);
        Assert.StartsWith("How far apart will your passes be", output, StringComparison.Ordinal);
        Assert.DoesNotContain("How large is the plot", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--rate: no unit in '8'", "--rate", "8", "--swath", "15 ft")]
    [InlineData("--swath is missing", "--rate", "8 lb/ac")]
    [InlineData("--way is missing", "--rate", "8 lb/ac", "--swath", "15 ft")]
    [InlineData("Give either", "--rate", "8 lb/ac", "--swath", "15 ft", "--used", "1 lb", "--caught", "1 lb")]
    [InlineData("--swath: '0 ft' is not above 0", "--rate", "8 lb/ac", "--swath", "0 ft", "--caught", "0.4 lb", "--catch-time", "30 s", "--pace-time", "23 s")]
    [InlineData("--gate: expected a setting and its flow", "--rate", "8 lb/ac", "--swath", "15 ft", "--caught", "0.4 lb", "--catch-time", "30 s", "--pace-time", "23 s", "--gate", "2")]
    [InlineData("--setting: expected a number", "--rate", "8 lb/ac", "--swath", "15 ft", "--caught", "0.4 lb", "--catch-time", "30 s", "--pace-time", "23 s", "--setting", "half")]
    [InlineData("--pace-time belongs to a timed catch, and this is a weighed run", "--rate", "8 lb/ac", "--swath", "15 ft", "--used", "1 lb", "--course", "200 ft", "--course-time", "46 s", "--pace-time", "23 s")]
    [InlineData("--course belongs to a weighed run, and this is a timed catch", "--rate", "8 lb/ac", "--swath", "15 ft", "--caught", "1 lb", "--catch-time", "30 s", "--course", "200 ft")]
    [InlineData("--caught belongs to a timed catch, and this is a weighed run", "--rate", "8 lb/ac", "--swath", "15 ft", "--way", "run", "--caught", "1 lb")]
    [InlineData("--rate is given 2 times", "--rate", "8 lb/ac", "--rate", "9 lb/ac")]
    [InlineData("--caught: '0 lb' is not above 0", "--rate", "8 lb/ac", "--swath", "15 ft", "--caught", "0 lb", "--catch-time", "30 s", "--pace-time", "23 s")]
    [InlineData("--plot: '0 ac' is not above 0", "--rate", "8 lb/ac", "--swath", "15 ft", "--caught", "1 lb", "--catch-time", "30 s", "--pace-time", "23 s", "--plot", "0 ac")]
    [InlineData("--gate: A gate table needs at least two", "--rate", "8 lb/ac", "--swath", "15 ft", "--caught", "0.4 lb", "--catch-time", "30 s", "--pace-time", "23 s", "--gate", "2=1 lb/min")]
    public void Bad_input_is_one_line_and_exit_code_two(string problem, params string[] arguments)
    {
        var (code, _, errors) = Run("", arguments);
        Assert.Equal(2, code);
        Assert.StartsWith(problem, Assert.Single(errors.TrimEnd().Split('\n')), StringComparison.Ordinal);
    }

    [Fact]
    public void A_flow_below_the_gate_table_gives_no_setting_but_says_what_to_do()
    {
        var (code, output, _) = Run("", [.. Catch, "--gate", "1=0.9 lb/min", "--gate", "2=2.4 lb/min"]);
        Assert.Equal(0, code);
        Assert.Contains("no setting: 0.727 lb/min is needed", output, StringComparison.Ordinal);
        Assert.Contains("spread-flow-too-small", output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_shows_what_the_console_prints()
    {
        // The page's numbers by hand: 0.8 lb/min measured, 8 x 15 x 2.9644 / 495 = 0.7186 needed, setting 2 + 0.2186 / 0.3; 23 s x 8 / 8.9056.
        string page = File.ReadAllText(Repository.PathOf("docs/spreading.md")).ReplaceLineEndings("\n");
        var (code, output, _) = Run("", "--material", "white clover", "--rate", "8 lb/ac", "--swath", "15 ft", "--catch-time", "30 s", "--caught", "6.2 oz", "--caught", "6.4 oz", "--caught", "6.6 oz",
            "--pace-time", "23 s", "--setting", "3", "--gate", "2=0.5 lb/min", "--scale-error", "0.1 oz", "--swath-error", "1 ft", "--plot", "0.25 ac");
        Assert.Equal(0, code);
        Assert.Contains($"```text\n{output}```", page, StringComparison.Ordinal);
        Assert.Contains("2.73; 0.719 lb/min is needed", output, StringComparison.Ordinal);
        Assert.Contains("20.7 s per 100 ft", output, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void The_country_of_the_computer_does_not_matter(string culture)
    {
        var plain = Run("", Catch);
        using var scope = new CultureScope(culture);
        Assert.Equal(plain, Run("", Catch));
    }

    private static (int Code, string Output, string Errors) Run(string answers, params string[] arguments)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        using var reader = new StringReader(answers);
        int code = CalibrateCommand.Create(new ConsoleStreams { In = reader, Out = output, Error = errors, Interactive = false }).Parse(arguments).Invoke(new InvocationConfiguration { Output = output, Error = errors, EnableDefaultExceptionHandler = false });
        return (code, output.ToString(), errors.ToString());
    }
}
