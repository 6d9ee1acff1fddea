using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>A text with places for values that is found by its code: a finding or a question.</summary>
/// <param name="Code">Stable code.</param>
/// <param name="Text">Text with its places.</param>
/// <param name="Subject">Name of the place that tells what it is about; null where it is the whole.</param>
/// <param name="Source">Who says so.</param>
internal abstract record CodedText(string Code, TextWithPlaces Text, string? Subject, Source Source)
{
    internal string? SubjectIn(ImmutableArray<FindingValue> values) =>
        Subject is { } place ? values.First(v => v.Name == place).Text : null;

    internal string TextWith(ImmutableArray<FindingValue> values) => Text.Filled([.. values.Select(v => (v.Name, v.Text))]);
}
