using System.Collections.Frozen;
using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>How an enumeration stands in the cells of tables: its names in lower case, hyphens between the words.</summary>
internal static class EnumCells<T>
    where T : struct, Enum
{
    internal static ImmutableArray<string> Words { get; } =
    [.. EnumWords<T>.FromNames().All.Select(w => w.Word.Replace(' ', '-'))];

    internal static FrozenDictionary<string, T> ByWord { get; } =
        Words.Zip(EnumWords<T>.FromNames().All, (word, v) => (word, v.Value)).ToFrozenDictionary(p => p.word, p => p.Value);
}
