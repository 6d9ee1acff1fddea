using System.Collections.Concurrent;
using System.Text.Json;
using Microsoft.CodeAnalysis;

namespace PlotAgronomy.Map.Sources;

/// <summary>What sources are compiled against: the running framework, and the packages and frameworks that a restore wrote down.</summary>
internal static class ReferenceAssemblies
{
    private static readonly ConcurrentDictionary<string, MetadataReference> Opened = [];

    private static readonly string RunningFramework = Path.GetDirectoryName(typeof(object).Assembly.Location)!;

    internal static IReadOnlyList<MetadataReference> Framework()
    {
        string trusted = (string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!;
        // The host may name the core library twice.
        return [.. trusted.Split(Path.PathSeparator).Distinct()
            .Where(file => Path.GetDirectoryName(file) == RunningFramework)
            .Select(Reference)];
    }

    /// <summary>The framework and what a project restored; a script takes what the projects it names restored.</summary>
    internal static IReadOnlyList<MetadataReference> Restored(string root, SourceProject project)
    {
        var taken = Framework().ToDictionary(r => Path.GetFileNameWithoutExtension(r.Display!));
        string[] folders = Directory.Exists(Path.Combine(root, project.Folder)) ? [project.Folder] : [.. project.Uses];
        foreach (string file in folders.SelectMany(folder => Assemblies(root, folder)))
        {
            taken.TryAdd(Path.GetFileNameWithoutExtension(file), Reference(file));
        }

        return [.. taken.Values];
    }

    private static MetadataReference Reference(string file) =>
        Opened.GetOrAdd(file, path => MetadataReference.CreateFromFile(path));

    private static List<string> Assemblies(string root, string folder)
    {
        string notes = Path.Combine(root, folder, "obj", "project.assets.json");
        if (!File.Exists(notes))
        {
            throw new InvalidDataException($"'{folder}' was never restored: run 'dotnet restore {folder}' first.");
        }

        using var read = JsonDocument.Parse(File.ReadAllText(notes));
        return [.. Packages(read.RootElement), .. Frameworks(read.RootElement).SelectMany(f => Directory.GetFiles(f, "*.dll"))];
    }

    private static IEnumerable<string> Packages(JsonElement notes)
    {
        var folders = notes.GetProperty("packageFolders").EnumerateObject().Select(f => f.Name).ToList();
        var places = notes.GetProperty("libraries").EnumerateObject()
            .Where(l => l.Value.GetProperty("type").GetString() == "package")
            .ToDictionary(l => l.Name, l => l.Value.GetProperty("path").GetString()!);
        return
            from package in notes.GetProperty("targets").EnumerateObject().First().Value.EnumerateObject()
            where places.ContainsKey(package.Name) && package.Value.TryGetProperty("compile", out _)
            from file in package.Value.GetProperty("compile").EnumerateObject()
            where file.Name.EndsWith(".dll", StringComparison.Ordinal)
            select Found(folders, Path.Combine(places[package.Name], file.Name));
    }

    /// <summary>The further frameworks a project asks for, beside the one that runs.</summary>
    private static IEnumerable<string> Frameworks(JsonElement notes) =>
        from framework in notes.GetProperty("project").GetProperty("frameworks").EnumerateObject()
        where framework.Value.TryGetProperty("frameworkReferences", out _)
        from asked in framework.Value.GetProperty("frameworkReferences").EnumerateObject()
        let folder = Path.GetFullPath(Path.Combine(RunningFramework, "..", "..", asked.Name, Path.GetFileName(RunningFramework)))
        where folder != RunningFramework && Directory.Exists(folder)
        select folder;

    private static string Found(List<string> folders, string file) =>
        folders.Select(folder => Path.Combine(folder, file)).FirstOrDefault(File.Exists)
        ?? throw new InvalidDataException($"'{file}' is no longer where it was restored: run 'dotnet restore' again.");
}
