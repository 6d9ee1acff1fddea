using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>One of a few words, each of which stands for something.</summary>
/// <typeparam name="T">What a word stands for.</typeparam>
/// <param name="words">The words.</param>
/// <param name="values">What each stands for; as many as words, or more.</param>
internal sealed class PlanChoice<T>(string[] words, T[] values) : PlanValue<T>
    where T : notnull
{
    internal PlanChoice(ImmutableArray<(string Word, T Value)> choices)
        : this([.. choices.Select(c => c.Word)], [.. choices.Select(c => c.Value)]) { }

    internal override string InWords => string.Join(", ", words.Select(w => $"`{w}`"));

    private string Words => string.Join(", ", words);

    internal override void Describe(Utf8JsonWriter schema) => SchemaText.WriteNames(schema, "enum", words);

    internal override bool TryRead(PlanNode node, PlanPart at, [MaybeNullWhen(false)] out T value)
    {
        int place = node.Kind == PlanNodeKind.Text ? Array.IndexOf(words, node.Text) : -1;
        if (place >= 0)
        {
            value = values[place];
            return true;
        }

        value = default;
        at.Report(node, $"expected one of {Words}, found {node.Describe()}");
        return false;
    }

    internal override PlanNode? Write(T value, string path, List<PlanProblem> refusals)
    {
        for (int i = 0; i < words.Length; i++)
        {
            if (EqualityComparer<T>.Default.Equals(values[i], value))
            {
                return new PlanNode(PlanNodeKind.Text, path, words[i]);
            }
        }

        refusals.Add(PlanProblem.At(path, $"there is no word for '{value}'; there are {Words}"));
        return null;
    }
}
