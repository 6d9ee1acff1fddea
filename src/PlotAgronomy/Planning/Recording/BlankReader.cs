using System.Collections.Immutable;
using PlotAgronomy.Records;

namespace PlotAgronomy.Planning;

/// <summary>How the answer to one blank becomes entries.</summary>
internal sealed class BlankReader
{
    private static readonly string[] Yes = ["yes", "y", "as planned", "done"];
    private static readonly string[] No = ["none", "no", "nothing", "not done"];

    /// <summary>Gets what is asked.</summary>
    internal required string Asks { get; init; }

    /// <summary>Gets what was planned, in words; null where nothing is.</summary>
    internal string? Planned { get; init; }

    internal required string Example { get; init; }

    /// <summary>Gets the day that was planned; null where it was not.</summary>
    internal DateOnly? Day { get; init; }

    internal required string Plot { get; init; }

    /// <summary>Gets what was done as planned; null where nothing was planned.</summary>
    internal Func<DateOnly, BookEntry>? AsPlanned { get; init; }

    internal required Func<DateOnly, string, ImmutableArray<BookEntry>> Instead { get; init; }

    /// <summary>Gets whether an entry of the book says what was done.</summary>
    internal required Func<BookEntry, bool> IsSaidBy { get; init; }

    /// <summary>Whether an entry of the book answers it: what was done, or that it was not.</summary>
    internal bool IsAnsweredBy(BookEntry entry) =>
        IsSaidBy(entry) || entry is NoteEntry { Note: { } note } && note == NothingDone;

    private string NothingDone => $"Not done: {Asks}";

    internal ImmutableArray<BookEntry> Read(string answer)
    {
        var typed = TypedText.Of(answer);
        string rest = typed.Rest.Trim(' ', ',', ';');
        bool isYes = rest.Length == 0 ? typed.On is not null : Yes.Contains(rest, StringComparer.OrdinalIgnoreCase);
        if (answer.Length == 0)
        {
            throw new FormatException($"say yes, none, or what was done: {Example}");
        }

        var day = typed.On ?? Day ?? throw new FormatException($"say the day too, as in: {Example}");
        if (No.Contains(rest, StringComparer.OrdinalIgnoreCase))
        {
            return [Note(Plot, day, NothingDone)];
        }

        return !isYes ? Instead(day, rest)
            : AsPlanned is { } planned ? [planned(day)]
            : throw new FormatException($"nothing was planned here: {Example}");
    }

    internal static NoteEntry Note(string plot, DateOnly on, string text) =>
        new()
        {
            On = on,
            Plot = plot,
            Note = text,
        };
}
