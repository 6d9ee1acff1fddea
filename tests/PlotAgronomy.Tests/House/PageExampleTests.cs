using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.House;

/// <summary>The examples of the pages are run by tests that see what is internal; a reader's own program does not.</summary>
public class PageExampleTests
{
    private const string IsInaccessible = "CS0122";

    public static TheoryData<string> Pages =>
        [
            .. Directory.GetFiles(Repository.PathOf("docs"), "*.md").Select(file => $"docs/{Path.GetFileName(file)}").Append("README.md")
                .Where(page => Blocks(page).Any()).Order(StringComparer.Ordinal),
        ];

    [Theory, MemberData(nameof(Pages)), Trait("Category", "Slow")]
    public void A_page_shows_only_what_its_reader_can_call(string page)
    {
        var lines = Blocks(page).SelectMany(block => block.Split('\n')).ToList();
        var usings = lines.Where(IsUsing).Select(l => l.Trim()).Concat(HouseAssembly.PublicTypes.Select(t => $"using {t.Namespace};")).Distinct();
        string body = string.Join('\n', lines.Where(l => !IsUsing(l)));
        string text = $"{string.Join('\n', usings)}\nclass Page\n{{\nvoid Run(System.IO.TextWriter output)\n{{\n{body}\n}}\n}}";
        Assert.Empty(
            Compilation(text).GetDiagnostics(TestContext.Current.CancellationToken).Where(d => d.Id == IsInaccessible).Select(d => d.GetMessage())
        );
    }

    /// <summary>The test itself notices a member that is internal.</summary>
    [Fact, Trait("Category", "Slow")]
    public void An_internal_member_is_noticed() =>
        Assert.Contains(
            Compilation("class Page { object Run() => PlotAgronomy.Guard.NotNull(new object(), \"a\"); }").GetDiagnostics(TestContext.Current.CancellationToken),
            d => d.Id == IsInaccessible
        );

    private static CSharpCompilation Compilation(string text) =>
        CSharpCompilation.Create(
            "Page",
            [CSharpSyntaxTree.ParseText("global using System; global using System.IO; global using System.Linq; global using System.Collections.Generic;"), CSharpSyntaxTree.ParseText(text)],
            DocumentedExamples.References,
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary).WithMetadataImportOptions(MetadataImportOptions.All)
        );

    private static bool IsUsing(string line) => line.StartsWith("using ", StringComparison.Ordinal) && line.TrimEnd().EndsWith(';') && !line.Contains('=', StringComparison.Ordinal);

    private static IEnumerable<string> Blocks(string page) =>
        File.ReadAllText(Repository.PathOf(page)).ReplaceLineEndings("\n").Split("```csharp\n").Skip(1).Select(rest => rest.Split("\n```")[0]);
}
