namespace PlotAgronomy.Records;

/// <summary>Says that the entry it corrects never happened. Both stay in the book.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record StruckEntry : BookEntry
{
    internal const string Word = "struck";

    internal override string What => Word;

    internal override void Write(FieldWriter to) => ArgumentNullException.ThrowIfNull(to);

    internal static StruckEntry Read(FieldReader from, DateOnly on, string plot) => new() { On = on, Plot = plot };
}
