namespace PlotAgronomy.Tests.House;

/// <summary>What a reader meets first has an example in its documentation, and the example prints what it says.</summary>
public class DocumentedExampleTests
{
    /// <summary>Everyday nouns that are read off another's answer and shown in its example.</summary>
    private static readonly string[] ReadOffAnother = ["AnswerCase", "FindingValue", "Origin"];

    private static readonly string[] RootEntries = ["ApplicationRate", "Fraction", "Amounts", "Offer", "Currency"];

    public static TheoryData<string> Types => [.. DocumentedExamples.ByType.Keys.Order(StringComparer.Ordinal)];

    [Theory, MemberData(nameof(Types))]
    public void The_example_prints_what_its_comments_say(string type)
    {
        string code = DocumentedExamples.ByType[type];
        Assert.InRange(code.Split('\n').Length, 2, 20);
        Assert.NotEmpty(DocumentedExamples.PrintedBy(code));
        Assert.Equal(DocumentedExamples.PrintedBy(code), DocumentedExamples.Run(type));
    }

    [Fact]
    public void Every_everyday_entry_has_an_example()
    {
        var named = DocumentedExamples.ByType.Keys.Select(NameOf).ToHashSet(StringComparer.Ordinal);
        var entries = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "House/everyday-nouns.txt")).Concat(RootEntries)
            .Where(noun => HouseAssembly.PublicTypes.Any(t => NameOf(t.FullName!) == noun && !t.IsEnum));
        Assert.Empty(entries.Except(named).Except(ReadOffAnother));
    }

    private static string NameOf(string type) => type.Split('.')[^1].Split('`')[0];
}
