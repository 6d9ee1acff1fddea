using PlotAgronomy.Planning;
using PlotAgronomy.Records;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.SampleConsole;

namespace PlotAgronomy.Tests.Planning.Recording;

/// <summary>The numbered blank for nitrogen that is given to the stand.</summary>
public class DressingBlankTests
{
    /// <summary>Grain alone, so that part of its nitrogen waits for the stand.</summary>
    private static PlotPlan Grain()
    {
        var plan = PlanFile.Read(File.ReadAllText(ConsoleTests.Data("fall-blend.json"))).Plan!;
        string[] straights = ["urea", "triple superphosphate", "muriate of potash"];
        return plan with { FertilizerOffers = [.. plan.FertilizerOffers.Where(o => straights.Contains(o.Item.Name))], Kinds = [.. plan.Kinds.Where(k => k.Kind.Id == "oats-spring").Select(k => k with { Share = KindShare.FromShare(k.Kind, 1) })] };
    }

    private static RecordQuestion Question(PlotBook book) =>
        Assert.Single(PlotRecord.Of(Grain().Solve(), book).Questions, q => q.Blank.Topic == RecordTopic.Dressing);

    [Fact]
    public void Nitrogen_for_the_stand_has_its_own_numbered_blank_on_sheet_and_console()
    {
        var answers = Grain().Solve();
        var line = Assert.Single(answers.Fertilizer.Value.LaterNitrogen.Value.Purchase.Value.Lines);
        var question = Question(PlotBook.Empty);
        Assert.Equal(answers.Field.Blanks.Length, question.Blank.Number);
        Assert.Contains(line.Product.Name, question.Text, StringComparison.Ordinal);
        Assert.Contains($"({question.Blank.Number}) {line.Product.Name}, later ____ lb on __/__", FieldSheet.Of(answers).ToText(), StringComparison.Ordinal);
        Assert.True(answers.Field.Blanks.Length <= 12);
    }

    /// <summary>The weight that was planned goes into the book with the day that was typed; what was spread for the sowing does not
    /// answer it.</summary>
    [Fact]
    public void As_planned_writes_what_was_planned_and_only_a_later_day_answers_it()
    {
        var answers = Grain().Solve();
        var line = answers.Fertilizer.Value.LaterNitrogen.Value.Purchase.Value.Lines[0];
        Assert.True(Question(PlotBook.Empty).TryRead("yes 2027-03-10", out var entries, out _));
        var given = Assert.IsType<FertilizerEntry>(Assert.Single(entries));
        Assert.Equal(line.Spread.Pounds, given.Weight.Pounds, 1e-9);
        Assert.Equal(new DateOnly(2027, 3, 10), given.On);
        Assert.Single(Question(PlotBook.Empty.With("a", given)).Answered);
        Assert.Empty(Question(PlotBook.Empty.With("a", given with { On = new(2026, 9, 12) })).Answered);
        Assert.True(Question(PlotBook.Empty).TryRead("1 bag 2027-03-10", out entries, out _));
        Assert.Equal(50, ((FertilizerEntry)entries[0]).Weight.Pounds, 1e-9);
        Assert.True(Question(PlotBook.Empty).TryRead("none 2027-03-10", out entries, out _));
        Assert.IsType<NoteEntry>(entries[0]);
    }

    /// <summary>Where the sowing takes the same product, the day tells them apart: ten days after it (practice) it is for the
    /// stand.</summary>
    [Theory]
    [InlineData(9, false)]
    [InlineData(10, true)]
    public void From_ten_days_after_sowing_on_it_is_for_the_stand(int days, bool isDressing)
    {
        var answers = Grain().Solve();
        var line = answers.Fertilizer.Value.Later[0];
        var spread = new FertilizerEntry { On = answers.Plan.PlantingDate!.Value.AddDays(days), Plot = answers.Plan.Plot.Name, Product = line.Product, Loads = [SpreadLoad.FromWeight(line.Spread)] };
        Assert.Equal(isDressing, DressingReader.IsDressing(answers, spread));
        Assert.Equal(isDressing, !Question(PlotBook.Empty.With("a", spread)).Answered.IsEmpty);
    }

    /// <summary>Every plan of the collection: at most twelve questions a season, each with a number of its own.</summary>
    [Fact]
    public void No_plan_asks_more_than_twelve_questions_a_season()
    {
        string[] files = Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Plans"), "*.json");
        Assert.NotEmpty(files);
        foreach (string file in files)
        {
            if (PlanFile.Read(File.ReadAllText(file)).Plan is { } plan)
            {
                var questions = PlotRecord.Of(plan.Solve(), PlotBook.Empty).Questions;
                Assert.True(questions.Length <= 12, $"{Path.GetFileName(file)}: {questions.Length}");
                Assert.Equal(questions.Length, questions.Select(q => q.Blank.Number).Distinct().Count());
            }
        }
    }
}
