using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace PlotAgronomy.Record;

/// <summary>Lays a value out in rows: simple values at once, results by walking their public properties.</summary>
internal sealed partial class Flattening
{
    private const int DeepestLevel = 4;

    private static readonly string[] Skipped =
        ["Text", "Formula", "Numbers", "Label", "Locator", "Source", "Sources", "Status"];

    private readonly List<(string Meaning, string Value)> rows = [];
    private readonly HashSet<object> seen = new(ReferenceEqualityComparer.Instance);

    private Flattening()
    {
    }

    internal static IReadOnlyList<(string Meaning, string Value)> Of(string meaning, object? value)
    {
        var flattening = new Flattening();
        flattening.Lay(meaning, value, 0);
        return flattening.rows;
    }

    [GeneratedRegex(@"\A[A-Za-z0-9][A-Za-z0-9_.+/-]*\z")]
    private static partial Regex WordLike();

    private void Lay(string meaning, object? value, int level)
    {
        if (value is Origin or Source)
        {
            return;
        }

        if (RecordedWord.TryOf(value, out string word))
        {
            rows.Add((meaning, word));
        }
        else if (value is Finding or IEnumerable<Finding>)
        {
            bool named = meaning.EndsWith("Findings", StringComparison.Ordinal);
            rows.Add((named ? meaning : Under(meaning, "Findings"), Codes(value)));
        }
        else if (value is IDictionary dictionary)
        {
            LayDictionary(meaning, dictionary, level);
        }
        else if (value is IEnumerable items)
        {
            LayItems(meaning, items, level);
        }
        else if (value is ITuple tuple)
        {
            for (int i = 0; i < tuple.Length; i++)
            {
                Lay($"{meaning}[{i}]", tuple[i], level + 1);
            }
        }
        else if (IsOwn(value!.GetType()))
        {
            LayObject(meaning, value, level);
        }
        else
        {
            throw new NotSupportedException($"There is no way to record a {value.GetType()} (at '{meaning}').");
        }
    }

    private void LayItems(string meaning, IEnumerable items, int level)
    {
        // An array that was never set has no answer in it.
        if (items.GetType() is { IsValueType: true } type && type.GetProperty("IsDefault")?.GetValue(items) is true)
        {
            rows.Add((meaning, RecordedWord.None));
            return;
        }

        int index = 0;
        foreach (object? item in items)
        {
            if (item is not string text || level == 0 || WordLike().IsMatch(text))
            {
                Lay($"{meaning}[{index}]", item, level + 1);
            }

            index++;
        }
    }

    private void LayDictionary(string meaning, IDictionary dictionary, int level)
    {
        var entries = dictionary.Keys.Cast<object>().Select(key => (Word: KeyWord(key), Value: dictionary[key]));
        foreach (var (word, value) in entries.OrderBy(e => e.Word, StringComparer.Ordinal))
        {
            Lay($"{meaning}[{word}]", value, level + 1);
        }
    }

    private void LayObject(string meaning, object value, int level)
    {
        var type = value.GetType();
        if (level > 0 && Identity(value) is { } id)
        {
            rows.Add((meaning, id));
            return;
        }

        if (level >= DeepestLevel || (!type.IsValueType && !seen.Add(value)))
        {
            return;
        }

        foreach (var property in Readable(type))
        {
            object? inner = Value(property, value);
            if (inner is not string text || WordLike().IsMatch(text))
            {
                Lay(Under(meaning, property.Name), inner, level + 1);
            }
        }
    }

    private static IEnumerable<PropertyInfo> Readable(Type type) =>
        type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(p => p.GetMethod is { IsPublic: true } && p.GetIndexParameters().Length == 0 && !p.PropertyType.IsByRefLike
                && !Skipped.Contains(p.Name) && !typeof(Delegate).IsAssignableFrom(p.PropertyType))
            .OrderBy(p => p.Name, StringComparer.Ordinal);

    /// <summary>Results of the library, and what a part of the record puts together itself.</summary>
    private static bool IsOwn(Type type) =>
        type.Assembly == typeof(Finding).Assembly || type.Assembly == typeof(Flattening).Assembly;

    private static object? Value(PropertyInfo property, object of)
    {
        try
        {
            return property.GetValue(of);
        }
        catch (TargetInvocationException refusal) when (refusal.InnerException is InvalidOperationException)
        {
            return null;
        }
    }

    /// <summary>Things of a catalog are told by their id alone.</summary>
    private static string? Identity(object value) => value.GetType().GetProperty("Id", typeof(string))?.GetValue(value) as string;

    private static string KeyWord(object key) =>
        RecordedWord.TryOf(key, out string word)
            ? word
            : Identity(key) ?? throw new NotSupportedException($"A {key.GetType()} is no key to record.");

    private static string Codes(object findings) =>
        string.Join(' ', (findings is Finding one ? [one] : (IEnumerable<Finding>)findings)
            .Select(f => f.Code).Order(StringComparer.Ordinal));

    private static string Under(string meaning, string name) => meaning.Length == 0 ? name : $"{meaning}.{name}";
}
