using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>One of a few words, each of which stands for something.</summary>
internal sealed class PlanChoice<T>(ImmutableArray<(string Word, T Value)> words) : PlanValue<T>
    where T : notnull
{
    internal override string InWords => string.Join(", ", words.Select(w => $"`{w.Word}`"));

    private string Words => string.Join(", ", words.Select(w => w.Word));

    internal override void Describe(Utf8JsonWriter schema) => SchemaText.WriteNames(schema, "enum", words.Select(w => w.Word));

    internal override bool TryRead(PlanNode node, PlanPart at, [MaybeNullWhen(false)] out T value)
    {
        foreach (var (word, found) in words)
        {
            if (node.Kind == PlanNodeKind.Text && node.Text == word)
            {
                value = found;
                return true;
            }
        }

        value = default;
        at.Report(node, $"expected one of {Words}, found {node.Describe()}");
        return false;
    }

    internal override PlanNode? Write(T value, string path, List<PlanProblem> refusals)
    {
        foreach (var (word, known) in words)
        {
            if (EqualityComparer<T>.Default.Equals(known, value))
            {
                return new PlanNode(PlanNodeKind.Text, path, word);
            }
        }

        refusals.Add(PlanProblem.At(path, $"there is no word for '{value}'; there are {Words}"));
        return null;
    }
}
