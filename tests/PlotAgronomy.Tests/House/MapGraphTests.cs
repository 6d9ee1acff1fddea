using PlotAgronomy.Map.Graphs;

namespace PlotAgronomy.Tests.House;

/// <summary>The map's two searches on graphs drawn by hand; an edge is two letters.</summary>
public class MapGraphTests
{
    [Theory]
    [InlineData("ab bc cd", "")]
    [InlineData("ab ba", "ab")]
    [InlineData("ab bc ca cd", "abc")]
    [InlineData("ab ba bc cd dc", "ab cd")]
    [InlineData("ab bc ca ad de ef fd", "abc def")]
    [InlineData("ab bc cb ca", "abc")]
    [InlineData("aa", "")]
    [InlineData("ab ac bd cd da", "abcd")]
    public void Cycles_are_the_groups_that_reach_one_another(string edges, string expected) =>
        Assert.Equal(expected, string.Join(' ', Cycles(edges)));

    [Fact]
    public void The_largest_cycle_comes_first() =>
        Assert.Equal(["cde", "ab"], Cycles("ab ba cd de ec"));

    [Fact]
    public void Every_node_is_in_one_group_and_a_group_follows_those_it_leads_to() =>
        Assert.Equal(
            ["d", "bc", "a"],
            StronglyConnected<char>.Groups("abcd", Next("ab bc cb cd")).Select(g => Word([.. g.Order()])));

    [Theory]
    [InlineData("ab bc cd ad", "a", "d", "ad")]
    [InlineData("ab bc cd", "a", "d", "abcd")]
    [InlineData("ab bc ca", "c", "b", "cab")]
    [InlineData("ab cb", "a", "c", "")]
    [InlineData("ab", "a", "a", "a")]
    [InlineData("ab bc xc", "ax", "c", "xc")]
    [InlineData("ab bc bd", "a", "cd", "abc")]
    public void The_path_has_the_fewest_steps(string edges, string starts, string ends, string expected) =>
        Assert.Equal(expected, Word(ShortestPath.Between(starts, ends.ToHashSet(), Next(edges))));

    private static IEnumerable<string> Cycles(string edges) =>
        StronglyConnected<char>.Cycles(Nodes(edges), Next(edges), Comparer<char>.Default).Select(Word);

    private static IEnumerable<char> Nodes(string edges) => edges.Where(char.IsLetter).Distinct().Order();

    private static Func<char, IEnumerable<char>> Next(string edges)
    {
        var from = edges.Split(' ').ToLookup(e => e[0], e => e[1]);
        return node => from[node];
    }

    private static string Word(IReadOnlyList<char> nodes) => string.Concat(nodes);
}
