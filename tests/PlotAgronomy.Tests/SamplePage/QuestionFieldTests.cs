using PlotAgronomy.OfflinePage.Answers;
using PlotAgronomy.OfflinePage.Fields;
using PlotAgronomy.OfflinePage.Plan;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.SamplePage;

/// <summary>A question on the page leads to the field that answers it.</summary>
public class QuestionFieldTests
{
    /// <summary>Answered in the plot book, by the weather, in the stand, or by a field that no plan file has.</summary>
    private static readonly string[] AskedElsewhere = ["record-", "weather-", "calendar-ask-forecast", "fertilizer-ask-soil-temperature", "fertilizer-ask-water", "seed-ask-count", "soil-ask-free-lime"];

    [Fact]
    public void Every_question_a_plan_may_ask_leads_to_a_field_or_is_answered_elsewhere()
    {
        string[] asked = [.. QuestionCatalog.Codes];
        Assert.Empty(asked.Where(c => QuestionFields.All.ContainsKey(c) == AskedElsewhere.Any(e => c.StartsWith(e, StringComparison.Ordinal))));
        Assert.Empty(QuestionFields.All.Keys.Except(asked));
    }

    [Fact]
    public void Every_question_with_a_way_into_the_plan_leads_to_a_field() =>
        Assert.Empty(WaysIntoPlan.Codes.Except(QuestionFields.All.Keys).Except(["fertilizer-ask-water"]));

    [Fact]
    public void The_fields_are_those_of_the_plan_file() =>
        Assert.All(QuestionFields.All.Values, f => Assert.True(PlanPlaces.IsField(PlanPath.Of(f).ToString()), f));
}
