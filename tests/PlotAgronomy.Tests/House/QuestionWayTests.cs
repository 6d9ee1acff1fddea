using PlotAgronomy.Planning;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.House;

/// <summary>The answer to every question has its way into a plan, or stands in <c>questions-without-way.txt</c> with the
/// reason.</summary>
public class QuestionWayTests
{
    private static readonly Dictionary<string, string> Without = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "House/questions-without-way.txt"))
        .Select(line => line.Split('|', StringSplitOptions.TrimEntries)).ToDictionary(cells => cells[0], cells => cells[1]);

    [Fact]
    public void Every_question_has_its_way_into_a_plan_or_its_reason() =>
        Assert.Equal(
            string.Join('\n', QuestionCatalog.Codes.Order(StringComparer.Ordinal)),
            string.Join('\n', WaysIntoPlan.Codes.Concat(WaysIntoPlan.NothingPrinted.Keys).Concat(Without.Keys).Order(StringComparer.Ordinal)));

    [Fact]
    public void Every_reason_is_told()
    {
        Assert.All(Without.Values, reason => Assert.NotEmpty(reason));
        Assert.All(WaysIntoPlan.NothingPrinted.Values, reason => Assert.NotEmpty(reason));
    }

    [Fact]
    public void No_question_with_values_of_its_own_is_left_to_the_list()
    {
        var values = QuestionCatalog.Templates.Where(t => !t.Plausible.IsEmpty).Select(t => t.Code);
        Assert.Empty(values.Where(code => Without.TryGetValue(code, out string? reason) && !reason.StartsWith("no plan raises it", StringComparison.Ordinal)));
    }
}
