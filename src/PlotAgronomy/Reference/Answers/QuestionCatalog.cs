using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>All questions by their codes: whom to ask, text and source. Every room keeps its own in Data/questions.csv.</summary>
internal static class QuestionCatalog
{
    private static readonly CodedTexts<QuestionTemplate> All = new("questions.csv", "question", FromRow);

    /// <summary>Gets the code of every question, in order.</summary>
    internal static ImmutableArray<string> Codes => All.Codes;

    /// <summary>Gets every question as its table holds it, in the order of their codes.</summary>
    internal static IEnumerable<QuestionTemplate> Templates => All.InOrder;

    /// <summary>Makes the question of a code whose plausible values its room knows.</summary>
    /// <param name="code">Code.</param>
    /// <param name="plausible">Plausible values of the fact, at most six.</param>
    /// <param name="print">A value in words.</param>
    /// <param name="values">Name and printed value of every {place} in the text, no more and no fewer.</param>
    internal static OpenQuestion<T> Ask<T>(
        string code,
        ImmutableArray<T> plausible,
        Func<T, string> print,
        params ReadOnlySpan<(string Place, string Value)> values
    )
        where T : notnull
    {
        var (template, given) = All.Fill(code, values);
        return new OpenQuestion<T>(template, given, plausible, print);
    }

    /// <summary>Makes the question of a code whose plausible values are the numbers of its row.</summary>
    /// <param name="code">Code.</param>
    /// <param name="fact">The fact that a number stands for.</param>
    /// <param name="print">A fact in words.</param>
    /// <param name="values">Name and printed value of every {place} in the text, no more and no fewer.</param>
    internal static OpenQuestion<T> AskNumber<T>(
        string code,
        Func<double, T> fact,
        Func<T, string> print,
        params ReadOnlySpan<(string Place, string Value)> values
    )
        where T : notnull
    {
        var (template, given) = All.Fill(code, values);
        return new OpenQuestion<T>(template, given, [.. template.Plausible.Select(fact)], print);
    }

    private static QuestionTemplate FromRow(CsvRow row) =>
        new(
            row.Text("code"),
            row.Choice<WhomToAsk>("whom"),
            new(row.Text("text")),
            row.TextOrNull("subject"),
            row.Source(),
            row.Status(),
            row.Numbers("plausible")
        );
}
