using System.Xml.Linq;

namespace PlotAgronomy.Map.Sources;

/// <summary>Reads the projects of a checkout with plain directory walks.</summary>
internal static class ProjectFiles
{
    /// <summary>The projects of one part; a project stands after those it refers to.</summary>
    internal static IReadOnlyList<SourceProject> Read(string root, params Part[] parts)
    {
        var waiting = parts
            .SelectMany(part => FilesUnder(Path.Combine(root, FolderOf(part)), ".csproj").Select(file => Read(root, part, file)))
            .ToList();
        var ordered = new List<SourceProject>();
        while (waiting.Count > 0)
        {
            var ready = waiting.FindAll(p => !p.Uses.Any(use => waiting.Exists(w => w.Folder == use)));
            if (ready.Count == 0)
            {
                string names = string.Join(", ", waiting.Select(w => w.Name));
                throw new InvalidDataException($"The projects refer to one another in a circle: {names}.");
            }

            ordered.AddRange(ready);
            waiting.RemoveAll(ready.Contains);
        }

        return ordered;
    }

    /// <summary>The files with an ending in a folder and below, without what a build leaves there.</summary>
    internal static IEnumerable<string> FilesUnder(string folder, string ending)
    {
        foreach (string file in Directory.EnumerateFiles(folder, "*" + ending).Order(StringComparer.Ordinal))
        {
            yield return file;
        }

        foreach (string inner in Directory.EnumerateDirectories(folder).Order(StringComparer.Ordinal))
        {
            if (Path.GetFileName(inner) is not ("bin" or "obj"))
            {
                foreach (string file in FilesUnder(inner, ending))
                {
                    yield return file;
                }
            }
        }
    }

    private static string FolderOf(Part part) => part switch
    {
        Part.Library => "src",
        Part.Sample => "samples",
        _ => "tests",
    };

    /// <summary>A file of another project, or all of a folder there.</summary>
    private static string[] Linked(string link, string folder)
    {
        string path = Path.GetFullPath(link, folder);
        return path.Contains('*', StringComparison.Ordinal)
            ? Directory.GetFiles(Path.GetDirectoryName(path)!, Path.GetFileName(path))
            : [path];
    }

    private static SourceProject Read(string root, Part part, string projectFile)
    {
        var project = XDocument.Load(projectFile);
        string folder = Path.GetDirectoryName(projectFile)!;
        var files = FilesUnder(folder, ".cs").Concat(Includes(project, "Compile").SelectMany(link => Linked(link, folder)));
        return new SourceProject
        {
            Name = Value(project, "AssemblyName") ?? Path.GetFileNameWithoutExtension(projectFile),
            Folder = Relative(root, folder),
            Part = part,
            Files = [.. files.Select(file => new SourceFile(Relative(root, file), File.ReadAllText(file)))],
            Usings = [.. Includes(project, "Using")],
            Friends = [.. Includes(project, "InternalsVisibleTo")],
            Uses = [.. Includes(project, "ProjectReference", e => e.Attribute("ReferenceOutputAssembly")?.Value != "false")
                .Select(use => Relative(root, Path.GetDirectoryName(Path.GetFullPath(use, folder))!))],
            IsProgram = Value(project, "OutputType") == "Exe",
            IsReadInPart = FilesUnder(folder, ".razor").Any(),
        };
    }

    private static IEnumerable<string> Includes(XDocument project, string item, Func<XElement, bool>? counts = null) =>
        project.Descendants(item).Where(counts ?? (_ => true)).Select(e => e.Attribute("Include")?.Value).OfType<string>();

    private static string? Value(XDocument project, string property) => project.Descendants(property).FirstOrDefault()?.Value;

    internal static string Relative(string root, string path) =>
        Path.GetRelativePath(root, path).Replace(Path.DirectorySeparatorChar, '/');
}
