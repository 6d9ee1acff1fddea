using System.Collections.Immutable;
using PlotAgronomy.Records;

namespace PlotAgronomy.Planning;

/// <summary>What is to be written into the plot book for a plan: what it meant, the blanks of its sheet, and single
/// entries.</summary>
/// <remarks>Nothing is written here: the entries are handed to a book.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class PlotRecord
{
    /// <summary>The most questions of a season; several settings of a spreader are then asked as one.</summary>
    internal const int MostQuestions = 12;

    private readonly PlotAnswers answers;
    private readonly PlotBook book;

    private PlotRecord(PlotAnswers answers, PlotBook book)
    {
        this.answers = answers;
        this.book = book;
    }

    /// <summary>Gets the blanks of the sheet as questions, at most twelve, in their order; those that the book answers already
    /// too.</summary>
    public ImmutableArray<RecordQuestion> Questions => Asked(answers.Field);

    /// <summary>Gets what the plan knows and the book does not yet: the soil report, the lime and the nutrients that were
    /// needed.</summary>
    public ImmutableArray<BookEntry> Meant => PlannedNeed.Of(answers, book);

    /// <summary>What is to be written down for a plan.</summary>
    /// <param name="answers">Answers of the plan.</param>
    /// <param name="book">The book so far.</param>
    /// <returns>The questions and entries.</returns>
    public static PlotRecord Of(PlotAnswers answers, PlotBook book) => new(Guard.NotNull(answers), Guard.NotNull(book));

    /// <summary>Reads a single entry as it is typed, such as <c>rain 0.8 in 2026-09-20</c> or <c>lime 18 bags
    /// 2026-04-10</c>.</summary>
    /// <param name="text">Text of a person: what it is, how much, the day.</param>
    /// <param name="entries">The entries; none where it cannot be read.</param>
    /// <param name="problem">What was expected; empty where it was read.</param>
    /// <returns>True when it was read.</returns>
    public bool TryRead(string? text, out ImmutableArray<BookEntry> entries, out string problem) =>
        RecordReading.Try(() => new SingleEntry(answers, book).Read(text?.Trim() ?? ""), out entries, out problem);

    /// <summary>How many questions are open.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{answers.Plan.Plot.Name}: {Amounts.Print(Questions.Count(q => q.Answered.IsEmpty), 0)} blanks open";

    private ImmutableArray<RecordQuestion> Asked(FieldPlan field)
    {
        var readers = new BlankReaders(answers, field);
        var blanks = field.Blanks;
        bool isLong = blanks.Length > MostQuestions;
        var settings = blanks.Where(b => isLong && b.Topic == RecordTopic.Setting).ToList();
        return
        [
            .. blanks
                .Where(b => settings.IndexOf(b) <= 0)
                .Select(b =>
                    Question(
                        b,
                        settings.Contains(b) ? readers.Setting([.. field.Walks.Where(w => w.Seed is not null)]) : readers.For(b)
                    )
                ),
        ];
    }

    private RecordQuestion Question(RecordBlank blank, BlankReader reader)
    {
        var from = PlannedNeed.SeasonOf(answers.Plan);
        return new(blank, reader)
        {
            Answered = [.. book.Of<BookEntry>(answers.Plan.Plot.Name).Where(e => e.On >= from).Where(reader.IsAnsweredBy)],
        };
    }
}
