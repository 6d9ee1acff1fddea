using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>A value of the file that becomes another type.</summary>
internal sealed class PlanMapped<TFile, T>(PlanValue<TFile> file, Func<TFile, T> there, Func<T, TFile> back) : PlanValue<T>
{
    internal override IPlanDefinition? Definition => file.Definition;

    internal override string InWords => file.InWords;

    internal override void Describe(Utf8JsonWriter schema) => file.Describe(schema);

    internal override bool TryRead(PlanNode node, PlanPart at, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        return file.TryRead(node, at, out var found) && at.TryStep(node, () => there(found), out value);
    }

    internal override PlanNode? Write(T value, string path, PlanRefusals refusals) => file.Write(back(value), path, refusals);
}
