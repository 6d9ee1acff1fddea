using Microsoft.CodeAnalysis;
using PlotAgronomy.Map.Model;
using PlotAgronomy.Map.Sources;

namespace PlotAgronomy.Tests.House;

/// <summary>A library of a few lines, mapped in memory.</summary>
internal static class TinySources
{
    private static readonly IReadOnlyList<MetadataReference> Framework = ReferenceAssemblies.Framework();

    /// <summary>Each file is its path below <c>src/Tiny</c> and its text.</summary>
    internal static CodeModel Library(params (string Path, string Text)[] files) => Everything(files, []);

    internal static CodeModel Everything((string Path, string Text)[] library, (string Path, string Text)[] tests) =>
        CodeModel.Load(
        [Project("Tiny", "src/Tiny", Part.Library, library), Project("Tiny.Tests", "tests/Tiny.Tests", Part.Test, tests)],
        _ => Framework);

    private static SourceProject Project(string name, string folder, Part part, (string Path, string Text)[] files) => new()
    {
        Name = name,
        Folder = folder,
        Part = part,
        Files = [.. files.Select(f => new SourceFile($"{folder}/{f.Path}", f.Text))],
        Friends = part == Part.Library ? ["Tiny.Tests"] : [],
        Uses = part == Part.Test ? ["src/Tiny"] : [],
    };
}
