using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.House;

/// <summary>Rules that show only in the text of the code.</summary>
public partial class SourceTextTests
{
    private static IEnumerable<string> LibraryFiles => FilesBelow("src");

    private static IEnumerable<string> SampleFiles => FilesBelow("samples");

    private static IEnumerable<string> FilesBelow(string folder) =>
        Directory.EnumerateFiles(Repository.PathOf(folder), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal));

    [Fact]
    public void A_file_holds_one_public_type_of_its_own_name()
    {
        var wrong = new List<string>();
        foreach (string file in LibraryFiles)
        {
            var names = PublicType().Matches(File.ReadAllText(file)).Select(m => m.Groups["name"].Value).Distinct().ToList();
            string stem = Path.GetFileName(file).Split('.')[0];
            if (names.Count > 1 || (names.Count == 1 && names[0] != stem))
            {
                wrong.Add($"{Path.GetRelativePath(Repository.Root, file)}: {string.Join(", ", names)}");
            }
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public void Room_and_namespace_agree() =>
        Assert.Empty(LibraryFiles.Where(f => !File.ReadAllText(f).Contains($"namespace {NamespaceOf(f)};", StringComparison.Ordinal)));

    [Fact]
    public void At_most_60_everyday_nouns_of_rooms_have_the_root_namespace()
    {
        Assert.True(EverydayNouns.Count <= 60);
        Assert.Empty(EverydayNouns.Except(HouseAssembly.PublicTypes.Where(t => t.Namespace == "PlotAgronomy" && HouseAssembly.FolderOf(t).Length > 0).Select(t => t.Name.Split('`')[0])));
    }

    private static readonly HashSet<string> EverydayNouns = [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "House/everyday-nouns.txt"))];

    [Fact]
    public void No_folder_holds_more_than_20_files() =>
        Assert.Empty(LibraryFiles.GroupBy(f => Path.GetDirectoryName(f)!).Where(g => g.Count() > 20)
            .Select(g => $"{Path.GetRelativePath(Repository.Root, g.Key)}: {g.Count()}"));

    /// <summary>A room is a first folder; the topic folders inside share its namespace.</summary>
    private static string NamespaceOf(string file) => EverydayNouns.Contains(Path.GetFileName(file).Split('.')[0]) ? "PlotAgronomy" : string.Join('.', Path.GetRelativePath(Repository.PathOf("src"), Path.GetDirectoryName(file)!).Split(Path.DirectorySeparatorChar).Take(2));

    [Fact]
    public void No_line_is_longer_than_130_characters() =>
        Assert.Empty(LibraryFiles.Concat(SampleFiles).SelectMany(f => File.ReadLines(f).Select((line, i) => (line.Length, Place: $"{f}:{i + 1}")))
            .Where(l => l.Length > 130).Select(l => l.Place));

    [Fact]
    public void No_conditional_stands_inside_an_interpolated_string() =>
        Assert.Empty(
            from file in LibraryFiles.Concat(SampleFiles)
            from hole in CSharpSyntaxTree.ParseText(File.ReadAllText(file)).GetRoot().DescendantNodes().OfType<InterpolationSyntax>()
            where hole.DescendantNodes().Any(n => n is ConditionalExpressionSyntax)
            select $"{Path.GetRelativePath(Repository.Root, file)}:{hole.GetLocation().GetLineSpan().StartLinePosition.Line + 1}");

    [Fact]
    public void No_file_is_longer_than_400_lines() =>
        Assert.Empty(LibraryFiles.Where(f => File.ReadLines(f).Count() > 400));

    [GeneratedRegex(@"^public (?:sealed |static |abstract |readonly |partial |ref )*(?:record struct|record class|record|class|struct|enum|interface|delegate \S+) (?<name>\w+)", RegexOptions.Multiline)]
    private static partial Regex PublicType();
}
