using PlotAgronomy.Sample;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.SampleConsole;

/// <summary>What goes wrong around a command is one line and an exit code, and no file of the user is lost.</summary>
public sealed class ConsoleFaultTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("plot-console-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string Here(string name) => Path.Combine(folder, name);

    private string Plan()
    {
        string plan = Here("my.json");
        File.Copy(ConsoleTests.Data("clover-lots.json"), plan);
        return plan;
    }

    private static void AssertOneLine(string error) => Assert.Single(error.TrimEnd('\n').Split('\n'));

    [Theory]
    [InlineData("plan", "")]
    [InlineData("check", "")]
    [InlineData("explain", "lime.rate", "")]
    [InlineData("plan", "--frob")]
    [InlineData("check", "--frob")]
    [InlineData("plan", "--format", "2")]
    [InlineData("plan", "--format", "xml")]
    [InlineData("plan", "--width", "abc")]
    [InlineData("plan", "--output", "")]
    public void A_wrong_word_is_one_plain_line(params string[] args)
    {
        var (exit, output, error) = ConsoleTests.Run(args);
        Assert.Equal((1, ""), (exit, output));
        AssertOneLine(error);
        Assert.DoesNotContain("PlotAgronomy", error, StringComparison.Ordinal);
        Assert.DoesNotContain("System.", error, StringComparison.Ordinal);
        Assert.DoesNotContain("no such file", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_is_no_plan() => Assert.Contains("folder", ConsoleTests.Run("check", folder).Error, StringComparison.Ordinal);

    [Fact]
    public void The_plan_is_never_overwritten_by_its_sheet()
    {
        string plan = Plan(),
            before = File.ReadAllText(plan);
        string link = Here("link.json");
        File.CreateSymbolicLink(link, plan);
        foreach (var (read, written) in ((string, string)[])[(plan, plan), (link, plan), (plan, link), (plan, Here("./my.json"))])
        {
            var (exit, _, error) = ConsoleTests.Run("plan", read, "--output", written);
            Assert.Equal(1, exit);
            AssertOneLine(error);
            Assert.Equal(before, File.ReadAllText(plan));
            Assert.Equal(plan, new FileInfo(link).LinkTarget);
        }
    }

    [Fact]
    public void A_folder_a_link_and_a_protected_name_are_not_written_and_no_draft_stays()
    {
        string plan = Plan(),
            other = Here("other.txt"),
            link = Here("link.txt"),
            below = Here("below");
        File.WriteAllText(other, "old");
        File.CreateSymbolicLink(link, other);
        Directory.CreateDirectory(below);
        foreach (string target in (string[])[link, below, Here("none/sheet.txt")])
        {
            var (exit, _, error) = ConsoleTests.Run("plan", plan, "--output", target);
            Assert.Equal(1, exit);
            AssertOneLine(error);
        }

        Assert.Equal("old", File.ReadAllText(other));
        Assert.Equal(["below", "link.txt", "my.json", "other.txt"], Directory.GetFileSystemEntries(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_file_beside_the_sheet_is_left_alone_and_an_old_sheet_is_replaced()
    {
        string sheet = Here("sheet.txt"),
            part = Here("sheet.txt.part");
        File.WriteAllText(sheet, "old");
        File.WriteAllText(part, "mine");
        Assert.Equal(0, ConsoleTests.Run("plan", Plan(), "--output", sheet).Exit);
        Assert.Equal("mine", File.ReadAllText(part));
        Assert.NotEqual("old", File.ReadAllText(sheet));
        Assert.Equal(3, Directory.GetFileSystemEntries(folder).Length);
    }

    [Fact]
    public void A_device_is_not_replaced()
    {
        Assert.SkipUnless(File.Exists("/dev/full"), "needs a system with this device");
        var (exit, _, error) = ConsoleTests.Run("plan", Plan(), "--output", "/dev/full");
        Assert.Equal(1, exit);
        Assert.Contains("no plain file", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan")]
    [InlineData("explain", "lime.rate")]
    [InlineData("--help")]
    public void A_screen_that_takes_nothing_is_one_line(params string[] args)
    {
        using var full = new FullWriter();
        using var error = new StringWriter();
        int exit = Program.Run(args, new ConsoleStreams { In = TextReader.Null, Out = full, Error = error, Interactive = false });
        Assert.Equal(1, exit);
        AssertOneLine(error.ToString().ReplaceLineEndings("\n"));
        Assert.Equal(1, Program.Run(args, new ConsoleStreams { In = TextReader.Null, Out = full, Error = full, Interactive = false }));
    }

    [Fact]
    public void What_would_command_a_terminal_is_not_written()
    {
        string plan = Here("bad.json");
        File.WriteAllText(plan, EditedPlan.With("clover-lots", "plot.\u001b[2J", "\"\\u0007\\u001b[31m\""));
        var (_, output, error) = ConsoleTests.Run("check", plan);
        Assert.NotEmpty(error);
        Assert.DoesNotContain(output + error, c => char.IsControl(c) && c != '\n');
    }

    private sealed class FullWriter : StringWriter
    {
        public override void Write(char value) => throw new IOException("No space left on device");

        public override void Write(string? value) => throw new IOException("No space left on device");

        public override void Flush() => throw new IOException("No space left on device");
    }
}
