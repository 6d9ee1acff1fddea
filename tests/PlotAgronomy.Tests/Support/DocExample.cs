namespace PlotAgronomy.Tests.Support;

/// <summary>Holds a page of docs/ against code that compiles and runs.</summary>
/// <remarks>The page's first csharp block after the heading must be, line for line, the part of the test file between
/// <c>// begin example</c> and <c>// end example</c>; the text block after it must be what that code writes.</remarks>
internal static class DocExample
{
    /// <param name="page">Page.</param>
    /// <param name="testFile">File of the test.</param>
    /// <param name="example">The example.</param>
    /// <param name="block">Which csharp block of the page, from 0.</param>
    internal static void AssertCurrent(string page, string testFile, Action<TextWriter> example, int block = 0)
    {
        string[] lines = File.ReadAllLines(Repository.PathOf(page));
        string[] code = BlockOf(lines, block, out int end);
        string[] printed = Block(lines, "```text", end, out _);
        Assert.Equal(CodeOf(testFile), code.SkipWhile(IsUsing).Select(l => l.Replace("Console.Write", "output.Write", StringComparison.Ordinal)));

        using var writer = new StringWriter { NewLine = "\n" };
        example(writer);
        string written = writer.ToString().TrimEnd('\n');
        Assert.True(string.Join('\n', printed) == written, $"{page} should show:\n{written}");
    }

    internal static string[] BlockOf(string page, int block) => BlockOf(File.ReadAllLines(Repository.PathOf(page)), block, out _);

    private static string[] BlockOf(string[] lines, int block, out int end)
    {
        string[] code = Block(lines, "```csharp", 0, out end);
        for (int i = 0; i < block; i++)
        {
            code = Block(lines, "```csharp", end + 1, out end);
        }

        return code;
    }

    private static bool IsUsing(string line) => line.Length == 0 || line.StartsWith("using ", StringComparison.Ordinal);

    private static string[] CodeOf(string testFile)
    {
        var lines = File.ReadAllLines(Repository.PathOf(testFile))
            .SkipWhile(l => l.Trim() != "// begin example").Skip(1)
            .TakeWhile(l => l.Trim() != "// end example").ToArray();
        int indent = lines.Where(l => l.Trim().Length > 0).Min(l => l.Length - l.TrimStart().Length);
        return [.. lines.Select(l => l.Length > indent ? l[indent..] : l.Trim())];
    }

    private static string[] Block(string[] lines, string fence, int from, out int end)
    {
        int start = Array.FindIndex(lines, from, l => l.Trim() == fence);
        Assert.True(start >= 0, $"no {fence} block after line {from}");
        end = Array.FindIndex(lines, start + 1, l => l.Trim() == "```");
        Assert.True(end > start, "the block is not closed");
        return lines[(start + 1)..end];
    }
}
