using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Root;

/// <summary>The words that the page on units lists are read, each for its amount alone.</summary>
public class UnitsPageTests
{
    private static readonly (string Amount, Func<string, bool> IsRead)[] Readers =
    [
        ("an area", t => Amounts.TryReadArea(t, out Area _, out _)),
        ("a weight", t => Amounts.TryReadMass(t, out Mass _, out _)),
        ("a length", t => Amounts.TryReadLength(t, out Length _, out _)),
        ("a volume", t => Amounts.TryReadVolume(t, out Volume _, out _)),
        ("a weight of a volume", t => Amounts.TryReadDensity(t, out Density _, out _)),
        ("a rate", t => Amounts.TryReadRate(t, out ApplicationRate _, out _)),
        ("a speed", t => Amounts.TryReadSpeed(t, out Speed _, out _)),
        ("a flow", t => Amounts.TryReadFlow(t, out MassFlow _, out _)),
        ("a time", t => Amounts.TryReadDuration(t, out TimeSpan _, out _)),
        ("a percentage", t => Amounts.TryReadPercent(t, out Fraction _, out _)),
    ];

    public static TheoryData<string> All => [.. Readers.Select(r => r.Amount)];

    [Theory, MemberData(nameof(All))]
    public void Every_word_on_the_page_is_read_for_its_amount_alone(string amount)
    {
        string[] words = Words(amount);
        Assert.NotEmpty(words);
        Assert.All(words, word => Assert.True(Readers.Single(r => r.Amount == amount).IsRead($"3 {word}"), word));
        foreach (string other in Readers.Select(r => r.Amount).Where(a => a != amount))
        {
            Assert.All(words.Except(Words(other)), word => Assert.False(Readers.Single(r => r.Amount == other).IsRead($"3 {word}"), $"{word} is {other} too"));
        }
    }

    private static string[] Words(string amount) =>
        [
            .. File.ReadLines(Repository.PathOf("docs/units.md"))
                .Single(l => l.StartsWith($"| {amount} |", StringComparison.Ordinal))
                .Split('|', StringSplitOptions.RemoveEmptyEntries)[1]
                .Split('`', StringSplitOptions.TrimEntries)
                .Where((_, i) => i % 2 == 1),
        ];
}
