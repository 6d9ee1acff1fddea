namespace PlotAgronomy.Records;

/// <summary>A free note, with pictures by file name.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record NoteEntry : BookEntry
{
    internal const string Word = "note";

    internal override string What => Word;

    internal override void Write(FieldWriter to) => ArgumentNullException.ThrowIfNull(to);

    internal static NoteEntry Read(FieldReader from, DateOnly on, string plot) => new() { On = on, Plot = plot };
}
