namespace PlotAgronomy.Map.Sources;

/// <summary>What is compiled into one assembly.</summary>
internal sealed class SourceProject
{
    /// <summary>Gets the name of the assembly.</summary>
    public required string Name { get; init; }

    /// <summary>Gets the path of the project's folder from the root of the repository.</summary>
    public required string Folder { get; init; }

    public required Part Part { get; init; }

    public required IReadOnlyList<SourceFile> Files { get; init; }

    /// <summary>Gets the namespaces every file uses beside those of the SDK.</summary>
    public IReadOnlyList<string> Usings { get; init; } = [];

    /// <summary>Gets the assemblies that see what is internal.</summary>
    public IReadOnlyList<string> Friends { get; init; } = [];

    /// <summary>Gets the folders of the projects it refers to.</summary>
    public IReadOnlyList<string> Uses { get; init; } = [];

    public bool IsProgram { get; init; }

    /// <summary>Gets whether its build adds code or packages that are not read, so that a name may have no meaning.</summary>
    public bool IsReadInPart { get; init; }
}
