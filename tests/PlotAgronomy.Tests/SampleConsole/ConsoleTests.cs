using System.Text.Json;
using PlotAgronomy.Sample;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.SampleConsole;

/// <summary>The sample console run in process against writers.</summary>
public class ConsoleTests
{
    internal static string Data(string name) => Repository.PathOf($"samples/data/{name}");

    internal static (int Exit, string Out, string Error) Run(params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        int exit = Program.Run(args, new ConsoleStreams { In = TextReader.Null, Out = output, Error = error, Interactive = false });
        return (exit, output.ToString().ReplaceLineEndings("\n"), error.ToString().ReplaceLineEndings("\n"));
    }

    [Theory]
    [Trait("Category", "Generated")]
    [InlineData("fall-blend")]
    [InlineData("frost-seeding")]
    [InlineData("county-report")]
    [InlineData("strip-reading")]
    [InlineData("printed-rate")]
    public void The_demo_sheets_are_the_approved_ones(string name)
    {
        var (exit, sheet, error) = Run("plan", Data($"{name}.json"), "--width", "100");
        Assert.Equal((0, ""), (exit, error));
        ApprovedText.AssertCurrent(Data($"{name}.approved.txt"), sheet);
    }

    [Fact]
    public void Without_arguments_the_demo_is_planned() => Assert.Equal(Run("plan").Out, Run().Out);

    [Fact]
    public void Ten_mistakes_are_ten_lines_on_stderr_and_exit_code_2()
    {
        var (exit, output, error) = Run("check", Path.Combine(AppContext.BaseDirectory, "PlanFiles", "ten-mistakes.json"));
        Assert.Equal((2, ""), (exit, output));
        string[] lines = error.TrimEnd('\n').Split('\n');
        Assert.Equal(10, lines.Length);
        Assert.All(lines, l => Assert.StartsWith("ten-mistakes.json: line ", l, StringComparison.Ordinal));
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sound_plan_is_called_sound() => Assert.Equal((0, "fall-blend.json: no mistakes found\n", ""), Run("check", Data("fall-blend.json")));

    [Fact]
    public void A_missing_file_is_one_line_and_exit_code_1()
    {
        var (exit, output, error) = Run("plan", "no-such-file.json");
        Assert.Equal((1, ""), (exit, output));
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }

    [Theory]
    [InlineData("dance")]
    [InlineData("plan", "a.json", "b.json")]
    [InlineData("plan", "--format", "pdf")]
    [InlineData("plan", "--width", "7")]
    [InlineData("check")]
    public void A_wrong_command_line_is_one_line_and_exit_code_1(params string[] args)
    {
        var (exit, _, error) = Run(args);
        Assert.Equal(1, exit);
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void Every_number_on_the_sheet_can_be_explained()
    {
        var (_, json, _) = Run("plan", Data("fall-blend.json"), "--format", "json");
        using var sheet = JsonDocument.Parse(json);
        var figures = Figures(sheet.RootElement).ToList();
        Assert.True(figures.Count > 30, $"{figures.Count} figures");
        foreach (var (code, text) in figures)
        {
            var (exit, output, error) = Run("explain", code, Data("fall-blend.json"));
            Assert.True(exit == 0, error);
            Assert.Contains(OneLine(text), OneLine(output), StringComparison.Ordinal);
            Assert.Contains("formula", output, StringComparison.Ordinal);
            Assert.Contains("source", output, StringComparison.Ordinal);
            Assert.Contains("status", output, StringComparison.Ordinal);
        }
    }

    [Fact]
    [Trait("Category", "Generated")]
    public void The_explained_numbers_are_the_approved_ones() =>
        ApprovedText.AssertCurrent(Data("explain.approved.txt"), string.Join("\n", ExplainedCodes.Select(code => Run("explain", code, Data("fall-blend.json"), "--width", "100").Out)));

    /// <summary>Lines read, from memory, by practice and of plain arithmetic.</summary>
    private static readonly string[] ExplainedCodes = ["rating.phosphorus", "lime.rate", "seed.austrian-winter-pea.weight", "pass-1.load"];

    [Fact]
    public void A_line_from_memory_says_so_and_a_line_of_arithmetic_names_no_publication()
    {
        string seed = Run("explain", "seed.austrian-winter-pea.weight", Data("fall-blend.json")).Out;
        Assert.Contains("from memory: not yet seen in the publication", Run("explain", "lime.rate", Data("clover-lots.json")).Out, StringComparison.Ordinal);
        Assert.Contains("seen in the publication\n", seed, StringComparison.Ordinal);
        Assert.Contains("source   arithmetic\n\n", Run("explain", "pass-1.load", Data("fall-blend.json")).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(100)]
    public void An_explanation_keeps_within_its_width(int width)
    {
        foreach (string code in ExplainedCodes)
        {
            string text = Run("explain", code, Data("fall-blend.json"), "--width", $"{width}").Out;
            Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, width));
        }
    }

    [Fact]
    public void An_explanation_names_each_publication_once_shows_no_block_twice_and_ends_with_the_status()
    {
        string text = Run("explain", "lime.rate", Data("fall-blend.json")).Out;
        Assert.Equal(2, text.Split("[LIME-S7]").Length);
        string[] blocks = text.TrimEnd('\n').Split("\n\n");
        Assert.Equal(blocks.Distinct(), blocks);
        Assert.StartsWith("The number as a whole\n  status ", blocks[^1], StringComparison.Ordinal);
        Assert.Contains("  where    lime equation\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mistake_of_sense_is_one_line_with_file_line_and_field_and_exit_code_2()
    {
        string folder = Directory.CreateTempSubdirectory("plot-agronomy-").FullName;
        string file = Path.Combine(folder, "my-plot.json");
        File.WriteAllText(file, File.ReadAllText(Data("fall-blend.json")).Replace("\"cec\":", "\"buffer\": { \"name\": \"Mehlich\", \"ph\": 4.6 }, \"cec\":", StringComparison.Ordinal));
        var (exit, output, error) = Run("check", file);
        Assert.Equal((2, ""), (exit, output));
        Assert.Matches(@"^my-plot\.json: line [0-9]+, column [0-9]+, \$\.soilReport\.waterPh: ", error);
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void An_unknown_code_lists_the_codes_there_are()
    {
        var (exit, _, error) = Run("explain", "lime.rat");
        Assert.Equal(2, exit);
        Assert.Contains("lime.rate", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Markdown_and_work_show_the_sources_of_the_sums()
    {
        string sheet = Run("plan", Data("fall-blend.json"), "--format", "markdown", "--work").Out;
        Assert.StartsWith("# Fern Bottom", sheet, StringComparison.Ordinal);
        Assert.Contains("## Lime", sheet, StringComparison.Ordinal);
        Assert.Contains("[LIME-S7]", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Output_goes_to_a_file_whole_or_not_at_all()
    {
        string folder = Directory.CreateTempSubdirectory("plot-agronomy-").FullName;
        string file = Path.Combine(folder, "sheet.md");
        Assert.Equal(0, Run("plan", "--format", "markdown", "--output", file).Exit);
        Assert.Equal([file], Directory.GetFiles(folder));
        Assert.Equal(1, Run("plan", "--output", Path.Combine(folder, "no", "such", "folder.txt")).Exit);
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>Every figure of a sheet by its code, and what is printed of it.</summary>
    private static IEnumerable<(string Code, string Text)> Figures(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object when element.TryGetProperty("code", out var code) && element.TryGetProperty("text", out var text) =>
            [(code.GetString()!, text.GetString()!)],
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => p.NameEquals("findings") ? [] : Figures(p.Value)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Figures),
        _ => [],
    };

    private static string OneLine(string text) => string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
