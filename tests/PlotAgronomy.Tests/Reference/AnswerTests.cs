using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Reference;

/// <summary>No answer, no need and an answer are three things.</summary>
public class AnswerTests
{
    private static OpenQuestion<double> Ask(params double[] plausible) =>
        QuestionCatalog.Ask("lime-ask-reading", [.. plausible], v => Amounts.Print(v, 1), ("method", "M"), ("needed", "a buffer pH"), ("laboratory", "the county laboratory"));

    [Fact]
    public void A_given_answer_gives_its_value()
    {
        var answer = Answers.Given("thirty bags");
        Assert.Equal(AnswerState.Given, answer.State);
        Assert.Equal("thirty bags", answer.Value);
        Assert.True(answer.TryGet(out string? value));
        Assert.Equal("thirty bags", value);
        Assert.Empty(answer.Questions);
        Assert.Empty(answer.Cases);
        Assert.Equal("given: thirty bags", answer.ToString());
    }

    [Fact]
    public void Nothing_needed_gives_the_value_that_says_zero_where_there_is_one()
    {
        var zero = Answers.NoneNeeded("no bags");
        Assert.Equal(AnswerState.NoneNeeded, zero.State);
        Assert.Equal("no bags", zero.Value);
        Assert.True(zero.TryGet(out _));
        var none = Answers.NoneNeeded<string>();
        Assert.False(none.TryGet(out _));
        Assert.Contains("Nothing is needed", Assert.Throws<InvalidOperationException>(() => none.Value).Message, StringComparison.Ordinal);
        Assert.Equal("none needed", none.ToString());
    }

    [Fact]
    public void An_open_answer_names_its_questions_and_gives_no_value()
    {
        var question = Ask(6, 6.5);
        var open = Answers.OpenButFor("a part", () => [question], () => question.CasesOf(v => v < 6.2 ? "many" : "few"));
        Assert.Equal(AnswerState.Open, open.State);
        Assert.False(open.TryGet(out string? value));
        Assert.Null(value);
        string message = Assert.Throws<InvalidOperationException>(() => open.Value).Message;
        Assert.Contains("Can the county laboratory tell it?", message, StringComparison.Ordinal);
        Assert.Contains("lime-ask-reading", message, StringComparison.Ordinal);
        Assert.True(open.TryGetPart(out string? part));
        Assert.Equal("a part", part);
        Assert.Equal(["6", "6.5"], open.Cases.Select(c => c.Assumption));
        Assert.Equal(["many", "few"], open.Cases.Select(c => c.Value));
        Assert.True(open.Cases[1].TryGetAssumed<double>(out double assumed));
        Assert.Equal(6.5, assumed);
        Assert.False(open.Cases[1].TryGetAssumed<string>(out _));
        Assert.Same(question, open.Cases[0].Question);
    }

    [Fact]
    public void A_number_may_be_an_answer_and_zero_is_not_nothing()
    {
        Assert.True(Answers.Given(0.0).TryGet(out double zero));
        Assert.Equal(0, zero);
        Assert.False(Answers.NoneNeeded<double>().TryGet(out _));
        Assert.False(Answers.Open<double>(() => [Ask(6)]).TryGetPart(out _));
    }

    [Fact]
    public void A_question_is_told_by_its_row()
    {
        var question = Ask(6.1, 7);
        Assert.Equal("lime-ask-reading", question.Code);
        Assert.Equal(WhomToAsk.Laboratory, question.Whom);
        Assert.Equal("M", question.Subject);
        Assert.Equal("M reads a buffer pH, which the report does not print. Can the county laboratory tell it?", question.Text);
        Assert.Equal(["6.1", "7"], question.PlausibleTexts);
        Assert.Equal(DataStatus.Practice, question.Status);
        Assert.Equal(Source.Practice, question.Source);
    }

    [Fact]
    public void Two_questions_about_the_same_thing_are_one()
    {
        Assert.Equal(Ask(6), Ask(7));
        Assert.Single(new OpenQuestion[] { Ask(6), Ask(7) }.Distinct());
        Assert.NotEqual<OpenQuestion>(
            Ask(),
            QuestionCatalog.Ask<double>("lime-ask-reading", [], v => "", ("method", "another"), ("needed", "a buffer pH"), ("laboratory", "the county laboratory"))
        );
    }

    [Fact]
    public void A_question_has_at_most_six_plausible_values()
    {
        Assert.Equal(6, Ask(1, 2, 3, 4, 5, 6).Plausible.Length);
        Assert.Throws<ArgumentException>(() => Ask(1, 2, 3, 4, 5, 6, 7));
    }

    [Fact]
    public void A_place_too_many_or_too_few_is_refused()
    {
        Assert.Contains("places", Assert.Throws<InvalidOperationException>(() => QuestionCatalog.Ask<double>("lime-ask-reading", [], v => "", ("method", "M"))).Message, StringComparison.Ordinal);
        Assert.Throws<KeyNotFoundException>(() => QuestionCatalog.Ask<double>("lime-ask-nothing", [], v => ""));
    }
}
