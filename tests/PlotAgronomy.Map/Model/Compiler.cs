using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using PlotAgronomy.Map.Sources;

namespace PlotAgronomy.Map.Model;

/// <summary>Compiles projects in memory, each against those it refers to.</summary>
internal static class Compiler
{
    private static readonly CSharpParseOptions Parsing = new(LanguageVersion.Latest, DocumentationMode.None);

    private static readonly string[] UsingsOfTheSdk =
    [
        "System", "System.Collections.Generic", "System.IO", "System.Linq", "System.Net.Http",
        "System.Threading", "System.Threading.Tasks",
    ];

    /// <summary>One compilation a project; the file of the usings and friends that a build would generate has no path.</summary>
    internal static IReadOnlyList<CSharpCompilation> Compile(
        IReadOnlyList<SourceProject> projects, Func<SourceProject, IEnumerable<MetadataReference>> references)
    {
        var done = new Dictionary<string, CSharpCompilation>();
        foreach (var project in projects)
        {
            var used = UsedBy(project, projects).Where(done.ContainsKey).Select(folder => done[folder].ToMetadataReference());
            done.Add(project.Folder, Compile(project, references(project).Concat(used)));
        }

        return [.. projects.Select(p => done[p.Folder])];
    }

    private static HashSet<string> UsedBy(SourceProject project, IReadOnlyList<SourceProject> projects)
    {
        var used = new HashSet<string>(project.Uses);
        used.UnionWith(projects.Where(p => project.Uses.Contains(p.Folder)).SelectMany(p => UsedBy(p, projects)));
        return used;
    }

    private static CSharpCompilation Compile(SourceProject project, IEnumerable<MetadataReference> references)
    {
        var trees = project.Files.AsParallel().AsOrdered().Select(f => CSharpSyntaxTree.ParseText(f.Text, Parsing, f.Path));
        var kind = project.IsProgram ? OutputKind.ConsoleApplication : OutputKind.DynamicallyLinkedLibrary;
        // Annotations without warnings: following where null may flow costs half the time and finds no name.
        var options = new CSharpCompilationOptions(kind, nullableContextOptions: NullableContextOptions.Annotations);
        return CSharpCompilation.Create(project.Name, trees.Append(Generated(project)), references, options);
    }

    private static SyntaxTree Generated(SourceProject project)
    {
        var usings = UsingsOfTheSdk.Concat(project.Usings).Select(u => $"global using {u};");
        var friends = project.Friends.Select(f => $"[assembly: System.Runtime.CompilerServices.InternalsVisibleTo(\"{f}\")]");
        return CSharpSyntaxTree.ParseText(string.Join('\n', usings.Concat(friends)), Parsing);
    }
}
