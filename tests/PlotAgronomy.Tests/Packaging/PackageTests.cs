using System.IO.Compression;
using System.Xml.Linq;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Packaging;

[Trait("Category", "Slow"), Collection(DotnetCommand.BuildsOfTheLibrary)]
public class PackageTests(PackedLibrary packed) : IClassFixture<PackedLibrary>
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

    private static string[] Block(string[] lines, string fence)
    {
        int start = Array.FindIndex(lines, l => l.Trim() == fence);
        Assert.True(start >= 0, $"README.md has no {fence} block");
        return lines[(start + 1)..Array.FindIndex(lines, start + 1, l => l.Trim() == "```")];
    }
}
