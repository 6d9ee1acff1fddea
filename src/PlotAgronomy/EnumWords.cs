using System.Collections.Frozen;
using System.Collections.Immutable;

namespace PlotAgronomy;

/// <summary>The words of an enumeration, written and read in one place.</summary>
/// <typeparam name="T">Enumeration.</typeparam>
internal sealed class EnumWords<T>
    where T : struct, Enum
{
    private readonly ImmutableArray<(T Value, string Word)> all;
    private readonly FrozenDictionary<T, string> words;

    /// <param name="words">Every value once, in the order in which they are listed.</param>
    /// <exception cref="ArgumentException">A value is missing or stands twice.</exception>
    internal EnumWords(params ReadOnlySpan<(T Value, string Word)> words)
    {
        all = [.. words];
        this.words = all.ToFrozenDictionary(w => w.Value, w => w.Word);
        if (Enum.GetValues<T>().Any(v => !this.words.ContainsKey(v)))
        {
            throw new ArgumentException($"Every value of {typeof(T).Name} needs a word.", nameof(words));
        }
    }

    /// <summary>The word of a value.</summary>
    internal string this[T value] => words[value];

    /// <summary>All words, in order.</summary>
    internal ImmutableArray<(T Value, string Word)> All => all;

    /// <summary>Words that are the names of the values in lower case, words and numbers apart:
    /// <c>TripleSuperphosphate</c> is "triple superphosphate".</summary>
    internal static EnumWords<T> FromNames() => new([.. Enum.GetValues<T>().Select(v => (v, Spaced(v.ToString())))]);

    internal string Or(IEnumerable<T> values) => string.Join(" or ", values.Select(v => this[v]));

    private static string Spaced(string name) =>
        string.Concat(name.Select((c, i) => StartsWord(name, i) ? $" {c}" : $"{c}")).ToLowerInvariant();

    private static bool StartsWord(string name, int at) =>
        at > 0 && (char.IsAsciiLetterUpper(name[at]) || (char.IsAsciiDigit(name[at]) && !char.IsAsciiDigit(name[at - 1])));
}
