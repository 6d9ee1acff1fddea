using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace PlotAgronomy.Planning;

/// <summary>Word lists made from enumerations whose names are the trade's own words.</summary>
internal static class PlanWords
{
    /// <summary>The names of an enumeration in lower case, words apart: <c>TripleSuperphosphate</c> is "triple superphosphate".</summary>
    internal static PlanWords<T> FromNames<T>()
        where T : struct, Enum => new([.. Enum.GetValues<T>().Select(v => (Spaced(v.ToString()), v))]);

    private static string Spaced(string name) =>
        string.Concat(
            name.Select(
                (c, i) => i > 0 && char.IsAsciiLetterUpper(c) ? $" {char.ToLowerInvariant(c)}" : $"{char.ToLowerInvariant(c)}"
            )
        );
}

/// <summary>The words a choice may use in a plan file, and the value behind each.</summary>
internal sealed class PlanWords<T>
    where T : notnull
{
    private readonly ImmutableArray<(string Word, T Value)> all;

    internal PlanWords(params ReadOnlySpan<(string Word, T Value)> words) => all = [.. words];

    internal ImmutableArray<string> Words => [.. all.Select(w => w.Word)];

    internal bool TryFind(string word, [MaybeNullWhen(false)] out T value)
    {
        foreach (var (candidate, found) in all)
        {
            if (candidate == word)
            {
                value = found;
                return true;
            }
        }

        value = default;
        return false;
    }

    /// <summary>The word of a value, for printing.</summary>
    internal string WordOf(T value) => all.First(w => EqualityComparer<T>.Default.Equals(w.Value, value)).Word;
}
