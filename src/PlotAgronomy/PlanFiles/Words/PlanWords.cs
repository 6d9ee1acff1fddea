using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace PlotAgronomy.PlanFiles;

/// <summary>Word lists of a plan file that are an enumeration's own words.</summary>
internal static class PlanWords
{
    /// <summary>Words with hyphens in place of spaces.</summary>
    internal static PlanWords<T> Hyphened<T>(EnumWords<T> words)
        where T : struct, Enum => new([.. words.All.Select(w => (w.Word.Replace(' ', '-'), w.Value))]);

    /// <param name="words">The enumeration's words.</param>
    /// <param name="never">Values that a plan file never names.</param>
    internal static PlanWords<T> From<T>(EnumWords<T> words, params ReadOnlySpan<T> never)
        where T : struct, Enum
    {
        ImmutableArray<T> left = [.. never];
        return new([.. words.All.Where(w => !left.Contains(w.Value)).Select(w => (w.Word, w.Value))]);
    }
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
