#pragma warning disable CA2263 // The generic calls are compiled anew for each of fifty enumerations.
using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace PlotAgronomy;

/// <summary>The words of an enumeration, written and read in one place.</summary>
/// <remarks>Plain arrays of numbers and words: a dictionary of each of fifty enumerations made the runtime compile five thousand
/// methods before the first sheet, and a generic call is compiled for each of them too.</remarks>
/// <typeparam name="T">Enumeration.</typeparam>
internal sealed class EnumWords<T>
    where T : struct, Enum
{
    private static readonly int[] Named = NamedKeys();

    private readonly int[] keys;
    private readonly string[] words;

    /// <param name="words">Every value once, in the order in which they are listed.</param>
    /// <exception cref="ArgumentException">A value is missing or stands twice.</exception>
    internal EnumWords(params (T Value, string Word)[] words)
    {
        keys = new int[words.Length];
        this.words = new string[words.Length];
        for (int i = 0; i < words.Length; i++)
        {
            keys[i] = KeyOf(words[i].Value);
            this.words[i] = words[i].Word;
            if (Array.IndexOf(keys, keys[i]) != i)
            {
                throw new ArgumentException($"{words[i].Value} stands twice.", nameof(words));
            }
        }

        foreach (int key in Named)
        {
            if (Array.IndexOf(keys, key) < 0)
            {
                throw new ArgumentException($"Every value of {typeof(T).Name} needs a word.", nameof(words));
            }
        }
    }

    private EnumWords(int[] keys, string[] words) => (this.keys, this.words) = (keys, words);

    /// <summary>The word of a value.</summary>
    internal string this[T value] =>
        Array.IndexOf(keys, KeyOf(value)) is >= 0 and int place
            ? words[place]
            : throw new KeyNotFoundException($"{value} is no value of {typeof(T).Name}.");

    internal int Count => keys.Length;

    /// <summary>All words, in order.</summary>
    internal ImmutableArray<(T Value, string Word)> All
    {
        get
        {
            var all = ImmutableArray.CreateBuilder<(T, string)>(Count);
            for (int i = 0; i < Count; i++)
            {
                all.Add((ValueAt(i), words[i]));
            }

            return all.MoveToImmutable();
        }
    }

    /// <summary>Words that are the names of the values in lower case, words and numbers apart:
    /// <c>TripleSuperphosphate</c> is "triple superphosphate".</summary>
    internal static EnumWords<T> FromNames() => new(Named, Array.ConvertAll(Enum.GetNames(typeof(T)), Spaced));

    internal static bool Has(T value) => Array.IndexOf(Named, KeyOf(value)) >= 0;

    internal T ValueAt(int place)
    {
        int key = keys[place];
        return Unsafe.As<int, T>(ref key);
    }

    internal string WordAt(int place) => words[place];

    internal string Or(IEnumerable<T> values) => string.Join(" or ", values.Select(v => this[v]));

    private static int KeyOf(T value) => Unsafe.As<T, int>(ref value);

    /// <summary>The numbers of the values, in the order of the names; an enumeration of another size than a whole number's has
    /// none and fails here.</summary>
    private static int[] NamedKeys() => (int[])Enum.GetValuesAsUnderlyingType(typeof(T));

    private static string Spaced(string name) =>
        string.Concat(name.Select((c, i) => StartsWord(name, i) ? $" {c}" : $"{c}")).ToLowerInvariant();

    private static bool StartsWord(string name, int at) =>
        at > 0 && (char.IsAsciiLetterUpper(name[at]) || (char.IsAsciiDigit(name[at]) && !char.IsAsciiDigit(name[at - 1])));
}
