using System.Collections.Immutable;
using System.Globalization;

namespace PlotAgronomy.Records;

/// <summary>What an entry writes: its fields as a person would write them, and its parts, such as the loads of a lime.</summary>
/// <remarks>What is not stated leaves no field. Numbers keep every digit.</remarks>
internal sealed class FieldWriter
{
    private readonly List<(string Name, string Text)> fields = [];
    private readonly List<FieldWriter> parts = [];

    internal ImmutableArray<(string Name, string Text)> Fields => [.. fields];

    internal ImmutableArray<FieldWriter> Parts => [.. parts];

    internal static string Of(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    internal FieldWriter Part()
    {
        var part = new FieldWriter();
        parts.Add(part);
        return part;
    }

    internal void Text(string name, string? text)
    {
        if (!string.IsNullOrWhiteSpace(text))
        {
            fields.Add((name, text));
        }
    }

    internal void Number(string name, double? number) => Text(name, number is { } known ? ExactText.Of(known) : null);

    internal void Quantity(string name, double? value, string unit) =>
        Text(name, value is { } known ? $"{ExactText.Of(known)} {unit}" : null);

    internal void Value<T>(string name, T? value)
        where T : struct, IJsonText<T> => Text(name, value is { } known ? T.ToJsonText(known) : null);

    internal void Choice<T>(string name, T? value, EnumWords<T> words)
        where T : struct, Enum => Text(name, value is { } known ? words[known] : null);

    internal void Flag(string name, bool? value) => Text(name, value is { } known ? FieldText.YesOrNo(known) : null);

    internal void Date(string name, DateOnly? date) => Text(name, date is { } known ? Of(known) : null);

    internal void List(string name, IEnumerable<string> texts) =>
        Text(name, string.Join(FieldText.ListMark, texts) is { Length: > 0 } joined ? joined : null);
}
