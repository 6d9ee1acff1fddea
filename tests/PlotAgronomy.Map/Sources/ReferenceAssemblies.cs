using System.Reflection.PortableExecutable;
using Microsoft.CodeAnalysis;

namespace PlotAgronomy.Map.Sources;

/// <summary>What the sources are compiled against: the running framework and what the build laid beside tests and samples.</summary>
internal static class ReferenceAssemblies
{
    internal static IReadOnlyList<MetadataReference> Framework()
    {
        string framework = Path.GetDirectoryName(typeof(object).Assembly.Location)!;
        string trusted = (string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!;
        // The host may name the core library twice.
        return [.. trusted.Split(Path.PathSeparator).Distinct()
            .Where(file => Path.GetDirectoryName(file) == framework)
            .Select(Reference)];
    }

    /// <summary>The framework and the packages found in the newest output folder of each project of tests and samples.</summary>
    internal static IReadOnlyList<MetadataReference> Built(string root, IEnumerable<string> ownAssemblies)
    {
        var taken = Framework().ToDictionary(r => Path.GetFileNameWithoutExtension(r.Display!));
        var own = ownAssemblies.ToHashSet();
        foreach (string file in Outputs(root).SelectMany(folder => Directory.EnumerateFiles(folder, "*.dll")))
        {
            string name = Path.GetFileNameWithoutExtension(file);
            if (!taken.ContainsKey(name) && !own.Contains(name) && IsManaged(file))
            {
                taken.Add(name, Reference(file));
            }
        }

        return [.. taken.Values];
    }

    private static MetadataReference Reference(string file) => MetadataReference.CreateFromFile(file);

    private static List<string> Outputs(string root)
    {
        string[] parts = ["tests", "samples"];
        var projects = parts.SelectMany(part => ProjectFiles.FilesUnder(Path.Combine(root, part), ".csproj"));
        var outputs = projects.Select(NewestOutput).OfType<string>().ToList();
        return outputs.Count > 0
            ? outputs
            : throw new InvalidDataException("Nothing is built under tests and samples: run 'dotnet build' first.");
    }

    private static string? NewestOutput(string projectFile)
    {
        var output = new DirectoryInfo(Path.Combine(Path.GetDirectoryName(projectFile)!, "bin"));
        return output.Exists
            ? output.EnumerateFiles("*.deps.json", SearchOption.AllDirectories)
                .Where(f => f.Directory!.Name.StartsWith("net", StringComparison.Ordinal))
                .MaxBy(f => f.LastWriteTimeUtc)?.DirectoryName
            : null;
    }

    private static bool IsManaged(string file)
    {
        using var reader = new PEReader(File.OpenRead(file));
        return reader.HasMetadata;
    }
}
