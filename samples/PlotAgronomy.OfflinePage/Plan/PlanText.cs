using System.Text;

namespace PlotAgronomy.OfflinePage.Plan;

/// <summary>The text of a plan file, of which one value at a time is changed: all else stays as it was typed, with its units,
/// its comments and its order.</summary>
internal sealed class PlanText
{
    private readonly byte[] bytes;

    internal PlanText(string text)
    {
        bytes = Encoding.UTF8.GetBytes(text);
        Root = PlanNodes.Read(bytes) is { Kind: PlanNodeKind.Part } root ? root : null;
    }

    /// <summary>Gets the whole plan, or null where the text holds none.</summary>
    internal PlanNode? Root { get; }

    internal PlanNode? Find(PlanPath path) => Root?.Find(path);

    public override string ToString() => Encoding.UTF8.GetString(bytes);

    /// <summary>Puts a value where the path leads, with the parts that are not there yet; null takes it out.</summary>
    internal string With(PlanPath path, string? json) =>
        Root is null ? ToString()
        : json is null ? Without(path)
        : Put(Root, PlanPath.Root, path, json);

    private string Put(PlanNode node, PlanPath at, PlanPath path, string json)
    {
        var step = path.Steps[at.Steps.Length];
        if (node.Find(step) is { } there)
        {
            var below = at with { Steps = [.. at.Steps, step] };
            bool isThere = below.Steps.Length == path.Steps.Length;
            var next = isThere ? default : path.Steps[below.Steps.Length];
            return !isThere && there.Kind == (next.Index is null ? PlanNodeKind.Part : PlanNodeKind.List)
                ? Put(there, below, path, json)
                : Replace(there.Start, there.End, New(path, below.Steps.Length, json, IndentOf(there.Start)));
        }

        string key = step.Index is null ? $"{NewPlanValue.Quoted(step.Name)}: " : "";
        return Add(node, indent => key + New(path, at.Steps.Length + 1, json, indent));
    }

    private static string New(PlanPath path, int from, string json, string indent) =>
        NewPlanValue.Of(path.Steps.AsSpan()[from..], json, indent);

    /// <summary>Adds a member or an item behind the last one.</summary>
    private string Add(PlanNode node, Func<string, string> write)
    {
        string outer = IndentOf(node.Start);
        int inside = node.Start + 1;
        if (LastIn(node) is not { } last)
        {
            string inner = outer + NewPlanValue.Indent;
            return Replace(inside, node.End - 1, $"\n{inner}{write(inner)}\n{outer}");
        }

        bool isOnLines = bytes.AsSpan(node.Start, node.End - node.Start).Contains((byte)'\n');
        int comma = CommaAfter(last.End);
        if (!isOnLines)
        {
            return Replace(last.End, comma < 0 ? last.End : comma + 1, $", {write(outer)}");
        }

        string indent = IndentOf(StartOf(node, last));
        int line = EndOfLine(Math.Max(last.End, comma + 1), node.End - 1);
        string added = $"\n{indent}{write(indent)}";
        return comma < 0 ? Replace(last.End, line, $",{Words(last.End, line)}{added}") : Replace(line, line, added);
    }

    /// <summary>Takes a value out, and with it a part or a list that holds nothing else.</summary>
    private string Without(PlanPath path)
    {
        if (Find(path) is not { } gone || path.Steps.IsEmpty)
        {
            return ToString();
        }

        var around = Find(path.Up)!;
        if (ValuesIn(around).Count == 1 && path.Steps.Length > 1)
        {
            return Without(path.Up);
        }

        int start = StartOf(around, gone);
        int comma = CommaAfter(gone.End);
        int end = EndOfLine(Math.Max(gone.End, comma + 1), around.End - 1);
        int before = start;
        while (before > around.Start + 1 && bytes[before - 1] is (byte)' ' or (byte)'\t')
        {
            before--;
        }

        bool hasItsLines = bytes[before - 1] == '\n' && (end == bytes.Length || bytes[end] is (byte)'\n' or (byte)'\r');
        (int from, int to) = hasItsLines ? (before - 1, end) : (start, comma < 0 ? gone.End : AfterBlanks(comma + 1));
        return ValuesIn(around) is [.., var previous, var last] && ReferenceEquals(last, gone)
            ? WithoutComma(previous.End, from, to)
            : Replace(from, to, "");
    }

    /// <summary>Takes out what is last, and the comma that stood before it.</summary>
    private string WithoutComma(int previous, int from, int to)
    {
        int comma = CommaAfter(previous);
        return Words(0, comma) + Words(comma + 1, from).TrimEnd(' ') + Words(to, bytes.Length);
    }

    private string Replace(int start, int end, string by) => Words(0, start) + by + Words(end, bytes.Length);

    private string Words(int start, int end) => Encoding.UTF8.GetString(bytes, start, end - start);

    private static PlanNode? LastIn(PlanNode node) => ValuesIn(node) is [.., var last] ? last : null;

    private static List<PlanNode> ValuesIn(PlanNode node) => [.. node.Items, .. node.Members.Select(m => m.Value)];

    private static int StartOf(PlanNode around, PlanNode value) =>
        around.Members.FirstOrDefault(m => ReferenceEquals(m.Value, value))?.Start ?? value.Start;

    /// <summary>The blanks at the beginning of the line in which a byte stands.</summary>
    private string IndentOf(int at)
    {
        int line = at == 0 ? 0 : Array.LastIndexOf(bytes, (byte)'\n', at - 1) + 1;
        int end = line;
        while (end < bytes.Length && bytes[end] is (byte)' ' or (byte)'\t')
        {
            end++;
        }

        return Words(line, end);
    }

    /// <summary>The comma behind a value, comments left aside; -1 where there is none.</summary>
    private int CommaAfter(int at)
    {
        while (true)
        {
            at = AfterBlanks(at);
            if (at >= bytes.Length)
            {
                return -1;
            }

            if (bytes[at] != '/')
            {
                return bytes[at] == ',' ? at : -1;
            }

            ReadOnlySpan<byte> end = bytes[at + 1] == '*' ? "*/"u8 : "\n"u8;
            int length = bytes.AsSpan(at).IndexOf(end);
            if (length < 0)
            {
                return -1;
            }

            at += length + end.Length;
        }
    }

    private int AfterBlanks(int at)
    {
        while (at < bytes.Length && bytes[at] is (byte)' ' or (byte)'\t' or (byte)'\n' or (byte)'\r')
        {
            at++;
        }

        return at;
    }

    /// <summary>The end of the line where nothing but a comment follows; else the place itself.</summary>
    private int EndOfLine(int at, int most)
    {
        int line = Array.IndexOf(bytes, (byte)'\n', at);
        string rest = line < 0 || line > most ? "" : Words(at, line).Trim();
        return line < 0 || line > most || (rest.Length > 0 && !rest.StartsWith("//", StringComparison.Ordinal)) ? at : line;
    }
}
