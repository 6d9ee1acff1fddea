using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using PlotAgronomy.Map.Sources;

namespace PlotAgronomy.Map.Model;

/// <summary>The code as plain facts: files, members, and who uses whom.</summary>
internal sealed class CodeModel
{
    public required IReadOnlyList<CodeFile> Files { get; init; }

    public required IReadOnlyDictionary<string, CodeMember> Members { get; init; }

    /// <summary>Gets the uses that stand in the text.</summary>
    public required IReadOnlyCollection<Reference> References { get; init; }

    /// <summary>Gets what constructors run unnamed; the line is that of the constructor.</summary>
    public required IReadOnlyCollection<Reference> Construction { get; init; }

    public required IReadOnlyList<StandIn> StandIns { get; init; }

    /// <summary>Gets the places of names without a meaning; empty when the code compiles.</summary>
    public required IReadOnlyList<string> NotUnderstood { get; init; }

    internal static CodeModel LoadLibrary(string root) => Load(root, Part.Library);

    internal static CodeModel LoadEverything(string root) => Load(root, Part.Library, Part.Sample, Part.Test);

    internal static CodeModel Load(IReadOnlyList<SourceProject> projects, Func<SourceProject, IEnumerable<MetadataReference>> references)
    {
        var compilations = Compiler.Compile(projects, references);
        var index = new MemberIndex();
        var declarations = new Declarations(index);
        var walkers = new List<NameWalker>();
        var notUnderstood = new List<string>();
        var files = new Dictionary<string, CodeFile>();
        foreach (var (project, compilation) in projects.Zip(compilations))
        {
            var trees = compilation.SyntaxTrees.Where(t => t.FilePath.Length > 0).ToList();
            var walked = trees.AsParallel().AsOrdered().Select(tree => Walk(compilation.GetSemanticModel(tree), index)).ToList();
            walkers.AddRange(walked);
            notUnderstood.AddRange(project.IsReadInPart ? [] : walked.SelectMany(w => w.NotUnderstood));
            declarations.Enter(compilation.Assembly.GlobalNamespace);
            foreach (var tree in trees)
            {
                files.TryAdd(tree.FilePath, Describe(tree, project));
            }
        }

        return new CodeModel
        {
            Files = [.. files.Values],
            Members = index.Members,
            References = [.. walkers.SelectMany(w => w.References).Distinct()],
            Construction = [.. declarations.Construction.Distinct()],
            StandIns = [.. declarations.StandIns.Distinct()],
            NotUnderstood = [.. notUnderstood.Distinct()],
        };
    }

    private static CodeModel Load(string root, params Part[] parts)
    {
        var projects = ProjectFiles.Read(root, parts);
        var scripts = parts.Contains(Part.Sample) ? ScriptFiles.Read(root, projects) : [];
        return Load([.. projects, .. scripts], project => ReferenceAssemblies.Restored(root, project));
    }

    private static NameWalker Walk(SemanticModel model, MemberIndex index)
    {
        var walker = new NameWalker(model, index);
        walker.Visit(model.SyntaxTree.GetRoot());
        return walker;
    }

    private static CodeFile Describe(SyntaxTree tree, SourceProject project)
    {
        var text = tree.GetText();
        int lines = text.Lines[^1].Span.IsEmpty ? text.Lines.Count - 1 : text.Lines.Count;
        string name = tree.GetRoot().DescendantNodes(n => n is CompilationUnitSyntax).OfType<BaseNamespaceDeclarationSyntax>()
            .FirstOrDefault()?.Name.ToString() ?? "";
        return new CodeFile(tree.FilePath, project.Part, project.Folder, name, lines);
    }
}
