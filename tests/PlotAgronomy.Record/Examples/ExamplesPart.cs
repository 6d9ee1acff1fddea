namespace PlotAgronomy.Record.Examples;

/// <summary>What every published example and case of practice gives, as the tests that assert them report it.</summary>
internal sealed class ExamplesPart : IRecordedPart
{
    public string Name => "examples";

    public void Record(Recorder recorder)
    {
        var run = ExampleRun.OfTheBuiltTests();
        recorder.Add("examples: the tests that assert them", "all passed", run.AllPassed);
        foreach (var example in run.Answers.GroupBy(a => (a.File, a.Example)).OrderBy(g => g.Key.File, StringComparer.Ordinal)
            .ThenBy(g => g.Key.Example, StringComparer.Ordinal))
        {
            string name = $"examples: {example.Key.File}: {example.Key.Example}";
            int ordinal = 0;
            foreach (string answer in example.Select(a => a.Actual).Order(ByNumber))
            {
                recorder.Add(name, $"answer {++ordinal}", answer);
            }
        }
    }

    /// <summary>Tests end in any order, so answers to one example are told apart by their size.</summary>
    private static readonly Comparer<string> ByNumber = Comparer<string>.Create((x, y) =>
        SameValue.TryNumber(x, out double left) && SameValue.TryNumber(y, out double right) && left != right
            ? left.CompareTo(right) : string.CompareOrdinal(x, y));
}
