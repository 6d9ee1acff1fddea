using System.IO.Compression;
using System.Xml.Linq;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Packaging;

[Trait("Category", "Slow"), Collection(DotnetCommand.BuildsOfTheLibrary)]
public class PackageTests(PackedLibrary packed)
{
    [Fact]
    public void The_package_holds_what_a_user_expects()
    {
        using var package = ZipFile.OpenRead(packed.PackagePath);
        var names = package.Entries.Select(e => e.FullName).ToList();
        Assert.Contains("README.md", names);
        Assert.Contains("icon.png", names);
        Assert.Contains("lib/net10.0/PlotAgronomy.dll", names);
        Assert.Contains("lib/net10.0/PlotAgronomy.xml", names);
        Assert.True(File.Exists(packed.SymbolsPath));
        Assert.DoesNotContain("warning", packed.Log, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void UnitsNet_and_MathNet_are_its_only_dependencies_and_the_licence_is_named()
    {
        using var package = ZipFile.OpenRead(packed.PackagePath);
        using var spec = package.GetEntry("PlotAgronomy.nuspec")!.Open();
        var xml = XDocument.Load(spec);
        Assert.Equal(["MathNet.Numerics", "UnitsNet"], xml.Descendants().Where(e => e.Name.LocalName == "dependency").Select(e => e.Attribute("id")!.Value).Order());
        Assert.Equal("MIT", xml.Descendants().Single(e => e.Name.LocalName == "license").Value);
        Assert.Contains("food-plot", xml.Descendants().Single(e => e.Name.LocalName == "tags").Value, StringComparison.Ordinal);
    }

    /// <summary>The next major version of a dependency may break what is promised here: it is not taken unasked.</summary>
    [Fact]
    public void No_dependency_reaches_into_its_next_major_version()
    {
        using var package = ZipFile.OpenRead(packed.PackagePath);
        using var spec = package.GetEntry("PlotAgronomy.nuspec")!.Open();
        var ranges = XDocument.Load(spec).Descendants().Where(e => e.Name.LocalName == "dependency").Select(e => e.Attribute("version")!.Value);
        Assert.Equal(["[5.0.0, 6.0.0)", "[5.75.1, 6.0.0)"], ranges.Order());
    }

    /// <summary>Who takes a version reads what it brings, in the words of the changelog; a feed takes no more than 35,000 characters.</summary>
    [Fact]
    public void Its_notes_are_the_newest_section_of_the_changelog_without_links_into_a_folder()
    {
        using var package = ZipFile.OpenRead(packed.PackagePath);
        using var spec = package.GetEntry("PlotAgronomy.nuspec")!.Open();
        string notes = XDocument.Load(spec).Descendants().Single(e => e.Name.LocalName == "releaseNotes").Value.ReplaceLineEndings("\n");
        string[] newest = [.. File.ReadLines(Repository.PathOf("CHANGELOG.md")).SkipWhile(l => !l.StartsWith("## ", StringComparison.Ordinal)).Skip(2)];
        string[] lines = notes.Split('\n');
        Assert.StartsWith("### ", lines[0], StringComparison.Ordinal);
        Assert.Equal("All changes: CHANGELOG.md in the repository", lines[^1]);
        Assert.Equal(newest.Take(lines.Length - 2).Where(l => !l.Contains("](", StringComparison.Ordinal)), lines[..^2].Zip(newest).Where(pair => !pair.Second.Contains("](", StringComparison.Ordinal)).Select(pair => pair.First));
        Assert.DoesNotContain("](", notes, StringComparison.Ordinal);
        Assert.InRange(notes.Length, 200, 35_000);
        Assert.DoesNotContain(lines, l => l.StartsWith("## ", StringComparison.Ordinal));
    }

    /// <summary>A page of a package has no folder beside it: whatever it links to would be dead.</summary>
    [Fact]
    public void The_page_of_the_package_is_short_links_to_no_file_and_shows_the_quick_start()
    {
        string page = File.ReadAllText(Repository.PathOf("src/PlotAgronomy/PACKAGE.md"));
        using var package = ZipFile.OpenRead(packed.PackagePath);
        using var inside = new StreamReader(package.GetEntry("README.md")!.Open());
        Assert.Equal(page, inside.ReadToEnd());
        Assert.DoesNotContain("](", page, StringComparison.Ordinal);
        string[] lines = page.Split('\n'), readme = File.ReadAllLines(Repository.PathOf("README.md"));
        Assert.InRange(lines.Length, 20, 80);
        Assert.Equal(Block(readme, "```csharp"), Block(lines, "```csharp"));
        Assert.Equal(Block(readme, "```text"), Block(lines, "```text"));
    }

    /// <summary>Who builds the sources anew can see that the package came from them.</summary>
    [Fact]
    public void The_same_sources_in_another_folder_make_the_same_bytes()
    {
        string[] built = [.. new[] { "one folder", "another folder" }.Select(name =>
        {
            string folder = Path.Combine(packed.Folder, name);
            CopySources(folder);
            var (exit, log) = DotnetCommand.Run(folder, "build", "src/PlotAgronomy", "-c", "Release", "-p:RunAnalyzers=false", "-p:ContinuousIntegrationBuild=true");
            Assert.True(exit == 0, log);
            return Path.Combine(folder, "src/PlotAgronomy/bin/Release/net10.0/PlotAgronomy.dll");
        })];
        Assert.True(File.ReadAllBytes(built[0]).AsSpan().SequenceEqual(File.ReadAllBytes(built[1])), "the bytes differ");
    }

    [Fact]
    public void The_quick_start_of_the_README_runs_against_the_package()
    {
        string[] readme = File.ReadAllLines(Repository.PathOf("README.md"));
        string[] code = Block(readme, "```csharp");
        Assert.True(code.Length < 25, $"the quick start has {code.Length} lines");
        string folder = packed.LayConsumer("QuickStart", string.Join('\n', code));
        var (exit, output) = DotnetCommand.Run(folder, "run");
        Assert.True(exit == 0, output);
        Assert.Equal(string.Join('\n', Block(readme, "```text")), output.ReplaceLineEndings("\n").TrimEnd());
    }

    private static void CopySources(string folder)
    {
        string[] sources = [.. Directory.EnumerateFiles(Repository.Root), .. Directory.EnumerateFiles(Repository.PathOf("src"), "*", SearchOption.AllDirectories)];
        foreach (string file in sources.Where(f => !f.Contains("/bin/", StringComparison.Ordinal) && !f.Contains("/obj/", StringComparison.Ordinal)))
        {
            string there = Path.Combine(folder, Path.GetRelativePath(Repository.Root, file));
            Directory.CreateDirectory(Path.GetDirectoryName(there)!);
            File.Copy(file, there);
        }
    }

    private static string[] Block(string[] lines, string fence)
    {
        int start = Array.FindIndex(lines, l => l.Trim() == fence);
        Assert.True(start >= 0, $"README.md has no {fence} block");
        return lines[(start + 1)..Array.FindIndex(lines, start + 1, l => l.Trim() == "```")];
    }
}
