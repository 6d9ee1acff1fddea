using System.Collections.Immutable;
using PlotAgronomy.Records;

namespace PlotAgronomy.Planning;

/// <summary>One blank of the sheet as a question: as planned, or what instead.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class RecordQuestion
{
    private readonly BlankReader reader;

    internal RecordQuestion(RecordBlank blank, BlankReader reader)
    {
        Blank = blank;
        this.reader = reader;
    }

    /// <summary>Gets the blank of the sheet.</summary>
    public RecordBlank Blank { get; }

    /// <summary>Gets what is asked, in words.</summary>
    public string Text => reader.Asks;

    /// <summary>Gets what was planned, in words; null where nothing can be planned, such as rain.</summary>
    public string? Planned => reader.Planned;

    /// <summary>Gets an answer as it may be typed in place of what was planned.</summary>
    public string Example => reader.Example;

    /// <summary>Gets the entries of the book that answer it already; none while it is open.</summary>
    public ImmutableArray<BookEntry> Answered { get; internal init; } = [];

    /// <summary>Reads an answer: <c>yes</c> or <c>as planned</c>, <c>none</c> where nothing of it was done, else what was done
    /// in its place, and the day where it was another one.</summary>
    /// <param name="answer">Text of a person.</param>
    /// <param name="entries">The entries; none where the answer cannot be read.</param>
    /// <param name="problem">What was expected; empty where it was read.</param>
    /// <returns>True when it was read.</returns>
    public bool TryRead(string? answer, out ImmutableArray<BookEntry> entries, out string problem) =>
        RecordReading.Try(() => reader.Read(answer?.Trim() ?? ""), out entries, out problem);

    /// <summary>The number and the question.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Blank.Number, 0)}. {Text}";
}
