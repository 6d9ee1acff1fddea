using System.Collections.Immutable;
using PlotAgronomy.Planning;
using PlotAgronomy.Records;

namespace PlotAgronomy.Sample.Commands;

/// <summary>Asks, writes into the book and says what was written and where.</summary>
internal sealed class BookKeeper(PlotAnswers answers, PlotBookFolder folder, string path, ConsoleStreams streams)
{
    private const string TypedAsTheyCome = "-";

    /// <summary>Goes down the blanks of the sheet. A blank line leaves one open; the end of the answers leaves the rest
    /// open.</summary>
    internal int AskAll()
    {
        var record = Read();
        int written = Write(record.Meant).Length;
        var questions = record.Questions;
        if (questions.IsEmpty)
        {
            streams.Error.WriteLine(
                "this plan has no blanks to ask: it needs kinds to sow and a spreader. Single entries can be written: "
                    + "record PLAN rain 0.8 in 2026-09-20"
            );
            return ExitCode.BadInput;
        }

        streams.Out.WriteLine(
            "As planned, or what instead? Answer yes, none, or what was done; a day only where it was another."
        );
        streams.Out.WriteLine("A blank line leaves a question for another time.");
        int open = 0;
        foreach (var question in questions)
        {
            streams.Out.WriteLine();
            if (!question.Answered.IsEmpty)
            {
                streams.Out.WriteLine($"{question}: in the book as {Names(question.Answered)}");
                continue;
            }

            var entries = Ask(question);
            open += entries.IsEmpty ? 1 : 0;
            written += Write(entries).Length;
        }

        streams.Out.WriteLine();
        Close(written, open);
        return ExitCode.Done;
    }

    /// <summary>Writes one entry that was typed with the command.</summary>
    internal int WriteOne(string text)
    {
        var record = Read();
        Write(record.Meant);
        if (!record.TryRead(text, out var entries, out string problem))
        {
            streams.Error.WriteLine(problem);
            return ExitCode.BadInput;
        }

        Say(Write(entries));
        streams.Out.WriteLine($"Written to {path}.");
        return ExitCode.Done;
    }

    /// <summary>Writes entries line by line, and names each as soon as it is on the disk.</summary>
    internal int WriteLines(string script)
    {
        using var file = script == TypedAsTheyCome ? null : new StreamReader(script);
        var lines = file ?? streams.In;
        Write(Read().Meant);
        bool isGood = true;
        int number = 0;
        while (lines.ReadLine() is { } line)
        {
            number++;
            if (string.IsNullOrWhiteSpace(line))
            {
                continue;
            }

            var record =
                line.StartsWith("instead", StringComparison.Ordinal) || line.StartsWith("strike", StringComparison.Ordinal)
                    ? Read()
                    : last ??= Read();
            if (record.TryRead(line, out var entries, out string problem))
            {
                Say(Write(entries));
                streams.Out.Flush();
            }
            else
            {
                streams.Error.WriteLine($"line {number}: {problem}");
                isGood = false;
            }
        }

        streams.Out.WriteLine($"Written to {path}.");
        return isGood ? ExitCode.Done : ExitCode.BadInput;
    }

    private PlotRecord? last;

    private PlotRecord Read()
    {
        var book = folder.Read();
        foreach (var remark in book.Findings)
        {
            streams.Error.WriteLine($"{path}: {remark.Text}");
        }

        return PlotRecord.Of(answers, book);
    }

    private ImmutableArray<BookEntry> Ask(RecordQuestion question)
    {
        while (true)
        {
            streams.Out.WriteLine(
                question.Planned is { } planned ? $"{question}? Planned: {planned}." : $"{question}? Such as: {question.Example}"
            );
            string? answer = streams.In.ReadLine();
            if (string.IsNullOrWhiteSpace(answer))
            {
                return [];
            }

            if (question.TryRead(answer, out var entries, out string problem))
            {
                return entries;
            }

            streams.Out.WriteLine($"  {problem}");
        }
    }

    private ImmutableArray<BookEntry> Write(ImmutableArray<BookEntry> entries) =>
        entries.IsEmpty ? [] : folder.Append(entries.AsSpan());

    private void Say(ImmutableArray<BookEntry> written)
    {
        foreach (var entry in written)
        {
            streams.Out.WriteLine($"{entry.Id}  {entry}");
        }
    }

    private void Close(int written, int open)
    {
        streams.Out.WriteLine($"{written} entries written to {path}.");
        if (open > 0)
        {
            streams.Out.WriteLine($"Still open: {open}. Run the command again when you know.");
        }
    }

    private static string Names(ImmutableArray<BookEntry> entries) => string.Join(", ", entries.Select(e => e.Id));
}
