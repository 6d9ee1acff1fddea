using PlotAgronomy.Sample.Commands;

namespace PlotAgronomy.Tests.SampleConsole;

/// <summary>A plan opens files below its own folder alone.</summary>
public sealed class PlanFolderTests : IDisposable
{
    private readonly DirectoryInfo above = Directory.CreateTempSubdirectory("plan-folder");

    public PlanFolderTests()
    {
        Directory.CreateDirectory(Path.Combine(above.FullName, "plan", "walks"));
        File.WriteAllText(Path.Combine(above.FullName, "secret.csv"), "secret");
        File.WriteAllText(Path.Combine(above.FullName, "plan", "walk.csv"), "walk");
        File.WriteAllText(Path.Combine(above.FullName, "plan", "walks", "one.csv"), "one");
    }

    private PlanFolder Folder => new(Path.Combine(above.FullName, "plan", "plan.json"));

    [Theory]
    [InlineData("walk.csv", "walk")]
    [InlineData("walks/one.csv", "one")]
    public void Opens_beside_and_below_the_plan(string name, string text) => Assert.Equal(text, Folder.Open(name));

    [Theory]
    [InlineData("../secret.csv")]
    [InlineData("walks/../../secret.csv")]
    [InlineData("walks\\..\\..\\secret.csv")]
    [InlineData("./walk.csv")]
    [InlineData("/etc/hostname")]
    [InlineData("walks")]
    [InlineData("gone.csv")]
    [InlineData("")]
    public void Opens_nothing_else(string name) => Assert.Null(Folder.Open(name));

    [Fact]
    public void Follows_no_link_to_a_file_or_a_folder()
    {
        File.CreateSymbolicLink(Path.Combine(above.FullName, "plan", "link.csv"), Path.Combine(above.FullName, "secret.csv"));
        Directory.CreateSymbolicLink(Path.Combine(above.FullName, "plan", "up"), above.FullName);
        Assert.Null(Folder.Open("link.csv"));
        Assert.Null(Folder.Open("up/secret.csv"));
    }

    public void Dispose() => above.Delete(recursive: true);
}
