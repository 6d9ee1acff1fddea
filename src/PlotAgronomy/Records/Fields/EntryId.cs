using System.Globalization;

namespace PlotAgronomy.Records;

/// <summary>The name of an entry: who wrote it and which of his it is.</summary>
/// <param name="Writer">Letters, digits and hyphens.</param>
/// <param name="Number">From 1.</param>
internal readonly record struct EntryId(string Writer, int Number) : IComparable<EntryId>
{
    internal static string CheckedWriter(string writer, string name) =>
        Guard.NotBlank(writer, name).All(c => char.IsAsciiLetterOrDigit(c) || c == '-')
            ? writer
            : throw new ArgumentException($"A writer's name has letters, digits and hyphens only, found '{writer}'.", name);

    internal static EntryId Checked(string text, string name)
    {
        int mark = Guard.NotBlank(text, name).LastIndexOf('-');
        return
            mark > 0
            && int.TryParse(text.AsSpan(mark + 1), NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            && number > 0
            && text[mark + 1] != '0'
            ? new(CheckedWriter(text[..mark], name), number)
            : throw new ArgumentException(
                $"An entry is named by its writer and a number, as in 'anna-12', found '{text}'.",
                name
            );
    }

    public int CompareTo(EntryId other) =>
        string.CompareOrdinal(Writer, other.Writer) is var byWriter and not 0 ? byWriter : Number.CompareTo(other.Number);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Writer}-{Number}");
}
