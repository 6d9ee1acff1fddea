using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Records;

/// <summary>Reads what an entry wrote. A field that is missing, of another form or that nobody reads is a
/// problem with its place.</summary>
/// <param name="file">Name used in messages.</param>
/// <param name="line">Line of the entry.</param>
/// <param name="fields">Fields by name.</param>
/// <param name="parts">Parts of the entry.</param>
/// <param name="kinds">Catalog in which kinds are found.</param>
internal sealed class FieldReader(
    string file,
    int line,
    IReadOnlyDictionary<string, string> fields,
    ImmutableArray<FieldReader> parts,
    KindCatalog kinds
)
{
    private readonly HashSet<string> read = new(StringComparer.Ordinal);

    internal ImmutableArray<FieldReader> Parts => parts;

    internal string? TextOrNull(string name)
    {
        read.Add(name);
        return fields.TryGetValue(name, out string? text) ? text : null;
    }

    internal string Text(string name) => TextOrNull(name) ?? throw Problem(name, "is missing");

    internal double? NumberOrNull(string name) => Made(name, text => (double?)ExactText.Number(text));

    internal double Number(string name) => NumberOrNull(name) ?? throw Problem(name, "is missing");

    internal int? WholeOrNull(string name) =>
        TextOrNull(name) is not { } text ? null
        : int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int whole) ? whole
        : throw Problem(name, $"expected a whole number, found '{text}'");

    internal int Whole(string name) => WholeOrNull(name) ?? throw Problem(name, "is missing");

    internal double? QuantityOrNull(string name, string unit) => Made(name, text => (double?)ExactText.Number(text, unit));

    internal double Quantity(string name, string unit) => QuantityOrNull(name, unit) ?? throw Problem(name, "is missing");

    internal T? ValueOrNull<T>(string name)
        where T : struct, IJsonText<T> => Made(name, text => (T?)T.FromJsonText(text));

    internal T? ChoiceOrNull<T>(string name, EnumWords<T> words)
        where T : struct, Enum => TextOrNull(name) is { } text ? Word(name, text, words) : null;

    internal T Choice<T>(string name, EnumWords<T> words)
        where T : struct, Enum => Word(name, Text(name), words);

    internal bool? FlagOrNull(string name) =>
        TextOrNull(name) switch
        {
            null => null,
            FieldText.Yes => true,
            FieldText.No => false,
            var text => throw Problem(name, $"expected {FieldText.Yes} or {FieldText.No}, found '{text}'"),
        };

    internal DateOnly? DateOrNull(string name) =>
        TextOrNull(name) is not { } text ? null
        : IsoDay.TryRead(text, out var date) ? date
        : throw Problem(name, $"expected a date such as 2026-05-31, found '{text}'");

    internal ImmutableArray<string> List(string name) => TextOrNull(name) is { } text ? [.. text.Split(FieldText.ListMark)] : [];

    internal CropKind? KindOrNull(string name) =>
        TextOrNull(name) is not { } text ? null
        : kinds.TryFind(text, out var kind, out string problem) ? kind
        : throw Problem(name, problem);

    internal CropKind Kind(string name) => KindOrNull(name) ?? throw Problem(name, "is missing");

    internal T Word<T>(string name, string text, EnumWords<T> words)
        where T : struct, Enum
    {
        foreach (var (value, word) in words.All)
        {
            if (word == text)
            {
                return value;
            }
        }

        throw Problem(name, $"expected one of {string.Join(", ", words.All.Select(w => w.Word))}, found '{text}'");
    }

    /// <summary>What is made of a text, where its maker refuses it with the reason.</summary>
    internal T? Made<T>(string name, Func<string, T?> make) =>
        TextOrNull(name) is { } text ? Try(name, () => make(text)) : default;

    internal T Try<T>(string? name, Func<T> make)
    {
        try
        {
            return make();
        }
        catch (Exception refused) when (refused is ArgumentException or KeyNotFoundException or OverflowException)
        {
            throw Problem(name, Guard.Said(refused));
        }
        catch (FormatException refused) when (refused is not DataFormatException)
        {
            throw Problem(name, Guard.Said(refused));
        }
    }

    internal void RefuseUnread()
    {
        if (fields.Keys.FirstOrDefault(name => !read.Contains(name)) is { } unread)
        {
            throw Problem(unread, "is no field of this entry");
        }

        foreach (var part in parts)
        {
            part.RefuseUnread();
        }
    }

    internal DataFormatException Problem(string? name, string problem) => new(file, line, name, problem);
}
