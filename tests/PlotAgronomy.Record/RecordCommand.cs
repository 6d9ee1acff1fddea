using System.Diagnostics;
using System.Globalization;

namespace PlotAgronomy.Record;

/// <summary>Makes the record, or compares today's numbers with it.</summary>
internal static class RecordCommand
{
    private const string Usage = "record make|compare FOLDER [--without-digests] [--written] [--part NAME]...";
    private const string NoDigests = "--without-digests";
    /// <summary>The plans are written and read again before they are answered.</summary>
    internal const string Written = "--written";

    private const string OnePart = "--part";
    private const int Shown = 40;

    /// <summary>Digest of what went in; when it differs, the answers say nothing.</summary>
    internal const string InputDigest = "plan.digest";

    internal static int Run(IRecordedPart[] parts, string[] args, TextWriter output)
    {
        var options = args.Skip(2).Where(a => a is not (NoDigests or Written)).Chunk(2).ToList();
        if (args is not [("make" or "compare") and var verb, var folder, ..]
            || options.Any(o => o is not [OnePart, var name] || parts.All(p => p.Name != name)))
        {
            output.WriteLine(Usage);
            output.WriteLine($"parts: {string.Join(' ', parts.Select(p => p.Name))}");
            return 2;
        }

        var wanted = parts.Where(p => options.Count == 0 || options.Any(o => o[1] == p.Name));
        return verb == "make" ? Make(wanted, folder, output) : Compare(wanted, folder, !args.Contains(NoDigests), output);
    }

    private static int Make(IEnumerable<IRecordedPart> parts, string folder, TextWriter output)
    {
        foreach (var part in parts)
        {
            (part as ICheckedPart)?.Check(folder);
            string path = RecordedTable.PathOf(folder, part);
            RecordedTable.Write(path, Record(part, output));
            output.WriteLine($"{part.Name}: {Print(new FileInfo(path).Length / 1024.0)} kB");
        }

        return 0;
    }

    private static int Compare(IEnumerable<IRecordedPart> parts, string folder, bool withDigests, TextWriter output)
    {
        var allowed = AllowedDifferences.Read(Path.Combine(folder, "allowed-differences.csv"));
        var left = new List<Difference>();
        foreach (var part in parts)
        {
            var old = RecordedTable.Read(RecordedTable.PathOf(folder, part));
            var now = Record(part, output);
            if (ChangedInput(old, now) is { } changed)
            {
                output.WriteLine(
                    $"{part.Name}: {changed.Case} is not the plan that was recorded ({changed.Old}, now {changed.New}):");
                output.WriteLine("the generator of the plans has changed, so nothing was compared.");
                output.WriteLine("Restore it, or make the record again from the old code.");
                return 1;
            }

            bool counts(RecordedRow row) => withDigests || !IsDigest(row);
            var comparison = Comparison.Of(old.Where(counts), now.Where(counts));
            var unwanted = comparison.Differences.Where(d => !allowed.Covers(d)).ToList();
            output.WriteLine($"{part.Name}: {comparison.Cases} cases, {comparison.Equal} values equal, "
                + $"{comparison.Renamed} meanings renamed, {comparison.Added} values more, "
                + $"{comparison.Differences.Count - unwanted.Count} differences allowed, {unwanted.Count} differences");
            left.AddRange(unwanted);
        }

        return Report(left, allowed, output);
    }

    private static int Report(List<Difference> left, AllowedDifferences allowed, TextWriter output)
    {
        foreach (string line in allowed.Report())
        {
            output.WriteLine(line);
        }

        if (left.Count == 0)
        {
            output.WriteLine("all equal");
            return 0;
        }

        output.WriteLine($"the first {Math.Min(Shown, left.Count)} of {left.Count} differences: case | meaning | old | new");
        foreach (var difference in left.Take(Shown))
        {
            output.WriteLine(difference);
        }

        foreach (var group in left.GroupBy(d => General(d.Meaning)).OrderByDescending(g => g.Count()).Take(Shown))
        {
            output.WriteLine($"{group.Count()} x {group.Key}");
        }

        return 1;
    }

    private static IReadOnlyList<RecordedRow> Record(IRecordedPart part, TextWriter output)
    {
        var watch = Stopwatch.StartNew();
        var recorder = new Recorder();
        part.Record(recorder);
        output.WriteLine($"{part.Name}: {recorder.Rows.Count} values in {Print(watch.Elapsed.TotalSeconds)} s");
        return recorder.Rows;
    }

    private static Difference? ChangedInput(IEnumerable<RecordedRow> old, IEnumerable<RecordedRow> now)
    {
        var today = now.Where(r => r.Meaning == InputDigest).ToDictionary(r => r.Case, r => r.Value);
        return old.Where(r => r.Meaning == InputDigest && today.GetValueOrDefault(r.Case) != r.Value)
            .Select(r => new Difference(r.Case, r.Meaning, r.Value, today.GetValueOrDefault(r.Case))).FirstOrDefault();
    }

    private static bool IsDigest(RecordedRow row) =>
        row.Meaning.EndsWith("digest", StringComparison.Ordinal) && row.Meaning != InputDigest;

    private static string General(string meaning) => string.Concat(meaning.Select(c => char.IsAsciiDigit(c) ? '#' : c));

    private static string Print(double number) => number.ToString("0.0", CultureInfo.InvariantCulture);
}
