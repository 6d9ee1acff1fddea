using System.Text.RegularExpressions;
using PlotAgronomy.Map.Model;
using PlotAgronomy.Map.Sources;

namespace PlotAgronomy.Map.Users;

/// <summary>What the C# examples of the README and the pages name.</summary>
/// <remarks>They are read as text, so a member of a value goes by its name alone.</remarks>
internal sealed partial class DocWords
{
    private readonly HashSet<string> _words = [];
    private readonly HashSet<string> _afterDot = [];
    private readonly HashSet<string> _pairs = [];
    private readonly HashSet<string> _set = [];
    private readonly HashSet<string> _created = [];
    private readonly HashSet<string> _spans = [];

    internal DocWords(IReadOnlyCollection<string> pages)
    {
        _spans.UnionWith(pages.SelectMany(page => CodeSpan().Matches(page))
            .SelectMany(m => Word().Matches(m.Value)).Select(m => m.Value));
        foreach (string code in pages.SelectMany(page => CodeBlock().Matches(page)).Select(m => m.Groups["code"].Value))
        {
            _words.UnionWith(Word().Matches(code).Select(m => m.Value));
            _afterDot.UnionWith(AfterDot().Matches(code).Select(m => m.Groups["name"].Value));
            _pairs.UnionWith(Pair().Matches(code).Select(m => $"{m.Groups["type"].Value}.{m.Groups["name"].Value}"));
            _set.UnionWith(Assigned().Matches(code).Select(m => m.Groups["name"].Value));
            _created.UnionWith(Created().Matches(code).Select(m => m.Groups["type"].Value));
        }
    }

    internal static DocWords Read(string root) =>
        new([.. ProjectFiles.FilesUnder(Path.Combine(root, "docs"), ".md")
            .Prepend(Path.Combine(root, "README.md"))
            .Select(File.ReadAllText)]);

    /// <summary>Whether the prose of a page has the bare name in code letters.</summary>
    internal bool NameInProse(CodeMember member) =>
        _spans.Contains(member.Kind == MemberKind.Type ? member.Type[(member.Type.LastIndexOf('.') + 1)..] : member.Name);

    internal bool Name(CodeMember member)
    {
        string type = member.Type[(member.Type.LastIndexOf('.') + 1)..];
        return member.Kind switch
        {
            MemberKind.Type => _words.Contains(type),
            MemberKind.Constructor => _created.Contains(type),
            MemberKind.Operator or MemberKind.Indexer => false,
            _ when member.IsStatic => _pairs.Contains($"{type}.{member.Name}"),
            _ => _afterDot.Contains(member.Name) || _set.Contains(member.Name),
        };
    }

    [GeneratedRegex(@"^```csharp\s*$(?<code>.*?)^```\s*$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex CodeBlock();

    [GeneratedRegex("(?<!`)`[^`\n]+`(?!`)")]
    private static partial Regex CodeSpan();

    [GeneratedRegex(@"\b[A-Za-z_]\w*")]
    private static partial Regex Word();

    [GeneratedRegex(@"\.(?<name>[A-Za-z_]\w*)")]
    private static partial Regex AfterDot();

    [GeneratedRegex(@"\b(?<type>[A-Za-z_]\w*)(?=\.(?<name>[A-Za-z_]\w*))")]
    private static partial Regex Pair();

    [GeneratedRegex(@"\b(?<name>[A-Za-z_]\w*)\s*=[^=>]")]
    private static partial Regex Assigned();

    [GeneratedRegex(@"\bnew\s+(?:\w+\.)*(?<type>[A-Za-z_]\w*)")]
    private static partial Regex Created();
}
