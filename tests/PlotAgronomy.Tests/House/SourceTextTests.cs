using System.Text.RegularExpressions;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.House;

/// <summary>Rules that show only in the text of the code.</summary>
public partial class SourceTextTests
{
    private static IEnumerable<string> LibraryFiles =>
        Directory.EnumerateFiles(Repository.PathOf("src"), "*.cs", SearchOption.AllDirectories)
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
    public void Folder_and_namespace_agree() =>
        Assert.Empty(LibraryFiles.Where(f =>
        {
            string folder = Path.GetRelativePath(Repository.PathOf("src"), Path.GetDirectoryName(f)!).Replace(Path.DirectorySeparatorChar, '.');
            return !File.ReadAllText(f).Contains($"namespace {folder};", StringComparison.Ordinal);
        }));

    [Fact]
    public void No_file_is_longer_than_400_lines() =>
        Assert.Empty(LibraryFiles.Where(f => File.ReadLines(f).Count() > 400));

    [GeneratedRegex(@"^public (?:sealed |static |abstract |readonly |partial |ref )*(?:record struct|record class|record|class|struct|enum|interface|delegate \S+) (?<name>\w+)", RegexOptions.Multiline)]
    private static partial Regex PublicType();
}
