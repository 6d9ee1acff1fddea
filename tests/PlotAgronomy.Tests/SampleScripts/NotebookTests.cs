using PlotAgronomy.Tests.Packaging;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.SampleScripts;

/// <summary>The notebook in <c>samples/notebook</c> and its twin: the same cells, run by a kernel against the package and as a
/// program against the project, print and draw the same.</summary>
[Collection(DotnetCommand.BuildsOfTheLibrary)]
public class NotebookTests(PackedLibrary packed)
{
    private const string Cells = "takes the charts.\n";
    private const string EndOfCells = "\n// In the notebook this is the first cell";

    private static readonly string Folder = Repository.PathOf("samples/notebook");

    private static string Read(string name) => File.ReadAllText(Path.Combine(Folder, name));

    private static Notebook Kept => new(Read("one-soil.ipynb"));

    /// <summary>The first two cells are the notebook's own: its packages, and how a chart is shown.</summary>
    [Fact]
    public void The_twin_has_the_same_cells()
    {
        string twin = Read("one-soil.cs").Split(Cells)[1].Split(EndOfCells)[0];
        Assert.Equal(twin.Trim('\n'), string.Join("\n\n", Kept.Code.Skip(2)));
        Assert.StartsWith("void Show(ScottPlot.Plot chart, string name) =>", Kept.Code[1], StringComparison.Ordinal);
        Assert.Contains("void Show(ScottPlot.Plot chart, string name)", Read("one-soil.cs"), StringComparison.Ordinal);
        Assert.Equal(Read("one-soil.cs").Split("#:package ScottPlot@")[1].Split('\n')[0], Kept.Code[0].Split("ScottPlot, ")[1].Split('"')[0]);
    }

    [Fact, Trait("Category", "Slow")]
    public void The_twin_prints_and_draws_what_stands_in_the_notebook()
    {
        string charts = Directory.CreateTempSubdirectory("plot-charts-").FullName;
        try
        {
            var (exit, said) = DotnetCommand.Run(Repository.Root, "run", "samples/notebook/one-soil.cs", "--", charts);
            Assert.True(exit == 0, said);
            Assert.Equal(string.Concat(Kept.Printed), said);
            Assert.Equal(["lime.svg", "seed.svg"], Directory.GetFiles(charts).Select(Path.GetFileName).Order(StringComparer.Ordinal));
            Assert.Equal(2, Kept.Drawn.Count(words => words.Length > 0));
        }
        finally
        {
            Directory.Delete(charts, recursive: true);
        }
    }

    [Fact, Trait("Category", "Slow")]
    public void A_kernel_runs_it_against_the_package_and_shows_what_stands_in_it()
    {
        var run = Run(Kept);
        Assert.Empty(run.Errors);
        if (Environment.GetEnvironmentVariable("UPDATE_DOCS") == "1")
        {
            File.WriteAllText(Path.Combine(Folder, "one-soil.ipynb"), Kept.WithOutputsOf(run));
        }

        Assert.Equal(Kept.Printed, run.Printed);
        Assert.Equal(Kept.Drawn, run.Drawn);
    }

    /// <summary>Lays the notebook beside a folder of packages, as its page says, and runs it without a window.</summary>
    private Notebook Run(Notebook notebook)
    {
        string there = Directory.CreateTempSubdirectory("plot-notebook-").FullName;
        try
        {
            string packages = Directory.CreateDirectory(Path.Combine(there, "packages")).FullName;
            File.Copy(packed.PackagePath, Path.Combine(packages, Path.GetFileName(packed.PackagePath)));
            File.Copy(Path.Combine(Folder, "nuget.config"), Path.Combine(there, "nuget.config"));
            Directory.CreateDirectory(Path.Combine(there, ".config"));
            File.Copy(Repository.PathOf(".config/dotnet-tools.json"), Path.Combine(there, ".config/dotnet-tools.json"));
            string named = notebook.Code[0].Split('"')[1];
            File.WriteAllText(Path.Combine(there, "one-soil.ipynb"), Read("one-soil.ipynb").Replace(named, $"nuget: PlotAgronomy, {packed.Version}", StringComparison.Ordinal));
            var (restored, log) = DotnetCommand.Run(there, "tool", "restore");
            Assert.True(restored == 0, log);
            string[] command = ["tool", "run", "dotnet-repl", "--run", "one-soil.ipynb", "--exit-after-run", "--output-format", "ipynb", "--output-path", "ran.ipynb"];
            var (exit, said) = DotnetCommand.Run(there, command);
            string ran = Path.Combine(there, "ran.ipynb");
            Assert.True(File.Exists(ran), said);
            var result = new Notebook(File.ReadAllText(ran));
            Assert.True(exit == 0, string.Join('\n', result.Errors));
            return result;
        }
        finally
        {
            Directory.Delete(there, recursive: true);
            string unpacked = Path.Combine(PackedLibrary.MachinePackages(), "plotagronomy", packed.Version);
            if (Directory.Exists(unpacked))
            {
                Directory.Delete(unpacked, recursive: true);
            }
        }
    }
}
