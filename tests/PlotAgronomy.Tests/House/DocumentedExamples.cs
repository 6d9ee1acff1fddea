using System.Reflection;
using System.Xml.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using PlotAgronomy.Map.Sources;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.House;

/// <summary>The examples in the documentation of the library's types, compiled together and run one by one.</summary>
internal static class DocumentedExamples
{
    private const string OutputSign = "// ";

    /// <summary>What a program of a reader is compiled against.</summary>
    internal static MetadataReference[] References { get; } =
        [.. ReferenceAssemblies.Framework(), MetadataReference.CreateFromFile(HouseAssembly.Library.Location), MetadataReference.CreateFromFile(typeof(Mass).Assembly.Location)];

    /// <summary>Name of the type to the code of its example.</summary>
    internal static IReadOnlyDictionary<string, string> ByType { get; } =
        XDocument.Load(Path.ChangeExtension(HouseAssembly.Library.Location, ".xml")).Descendants("member")
            .Where(m => m.Attribute("name")!.Value.StartsWith("T:", StringComparison.Ordinal) && m.Element("example") is not null)
            .ToDictionary(m => m.Attribute("name")!.Value[2..], m => Unindented(m.Element("example")!.Element("code")!.Value));

    /// <summary>What an example says it prints: its comments, line by line.</summary>
    internal static string PrintedBy(string code) =>
        string.Join('\n', code.Split('\n').Select(l => l.Trim()).Where(l => l.StartsWith(OutputSign, StringComparison.Ordinal)).Select(l => l[OutputSign.Length..]));

    /// <summary>Runs the example of a type.</summary>
    internal static string Run(string type)
    {
        using var output = new StringWriter { NewLine = "\n" };
        Compiled.Value.GetType("Examples")!.GetMethod(Method(type))!.Invoke(null, [output]);
        return output.ToString().TrimEnd('\n');
    }

    private static readonly Lazy<Assembly> Compiled = new(() =>
    {
        string usings = string.Concat(HouseAssembly.PublicTypes.Select(t => t.Namespace).Distinct().Select(n => $"using {n};\n"));
        string methods = string.Concat(ByType.Select(e => $"public static void {Method(e.Key)}(TextWriter output)\n{{\n{Runnable(e.Value)}\n}}\n"));
        string text = $"using System;\nusing System.IO;\nusing System.Linq;\nusing System.Collections.Generic;\nusing UnitsNet;\n{usings}public static class Examples\n{{\n{methods}}}\n";
        var options = new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable, generalDiagnosticOption: ReportDiagnostic.Error);
        using var bytes = new MemoryStream();
        var result = CSharpCompilation.Create("Examples", [CSharpSyntaxTree.ParseText(text)], References, options).Emit(bytes);
        Assert.True(result.Success, string.Join('\n', result.Diagnostics.Where(d => d.Severity == DiagnosticSeverity.Error).Select(d => $"{d.GetMessage()} in: {text.Split('\n')[d.Location.GetLineSpan().StartLinePosition.Line]}")));
        return Assembly.Load(bytes.ToArray());
    });

    /// <summary>The reader's own file is the demo; the screen is a writer.</summary>
    private static string Runnable(string code) =>
        code.Replace("Console.Write", "output.Write", StringComparison.Ordinal)
            .Replace("\"my-plot.json\"", $"@\"{Repository.PathOf("samples/data/fall-blend.json")}\"", StringComparison.Ordinal);

    private static string Method(string type) => type.Replace('.', '_').Replace('`', '_');

    private static string Unindented(string code)
    {
        string[] lines = code.ReplaceLineEndings("\n").Trim('\n', ' ').Split('\n');
        int indent = lines.Skip(1).Where(l => l.Trim().Length > 0).Select(l => l.Length - l.TrimStart().Length).DefaultIfEmpty(0).Min();
        return string.Join('\n', lines.Select((l, i) => i > 0 && l.Length > indent ? l[indent..] : l.Trim()));
    }
}
