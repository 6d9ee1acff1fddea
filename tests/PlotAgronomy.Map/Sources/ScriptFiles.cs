using System.Text.RegularExpressions;

namespace PlotAgronomy.Map.Sources;

/// <summary>Reads the programs of one file among the samples: those that name in a line <c>#:project</c> what they refer to.</summary>
internal static partial class ScriptFiles
{
    /// <summary>One project a script; what it names of its packages is not read.</summary>
    internal static IReadOnlyList<SourceProject> Read(string root, IReadOnlyList<SourceProject> projects)
    {
        var taken = projects.SelectMany(p => p.Files).Select(f => f.Path).ToHashSet();
        return [.. ProjectFiles.FilesUnder(Path.Combine(root, "samples"), ".cs")
            .Select(file => new SourceFile(ProjectFiles.Relative(root, file), File.ReadAllText(file)))
            .Where(file => !taken.Contains(file.Path) && NamedProject().IsMatch(file.Text))
            .Select(file => Script(root, file))];
    }

    private static SourceProject Script(string root, SourceFile file)
    {
        string folder = Path.GetDirectoryName(file.Path)!.Replace(Path.DirectorySeparatorChar, '/');
        var named = NamedProject().Matches(file.Text).Select(m => m.Groups["path"].Value)
            .Select(path => Path.GetDirectoryName(Path.GetFullPath(path, Path.Combine(root, folder)))!)
            .Select(used => ProjectFiles.Relative(root, used));
        return new SourceProject
        {
            Name = Path.GetFileNameWithoutExtension(file.Path),
            Folder = file.Path,
            Part = Part.Sample,
            Files = [file],
            Uses = [.. named],
            IsProgram = true,
            IsReadInPart = true,
        };
    }

    [GeneratedRegex(@"^#:project +(?<path>\S+)", RegexOptions.Multiline)]
    private static partial Regex NamedProject();
}
