using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>A field as it is declared: it says what its value says.</summary>
internal sealed class PlanValueField<TRead>(string name, PlanNeed need, PlanValue value, string meaning)
    : PlanField<TRead>(name, need, meaning)
{
    internal override string InWords => value.InWords;

    internal override IPlanDefinition? Definition => value.Definition;

    internal override bool IsList => value.IsList;

    internal override void Describe(Utf8JsonWriter schema) => value.Describe(schema);
}
