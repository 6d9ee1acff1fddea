namespace PlotAgronomy.PlanFiles;

/// <summary>Whether a field must be there.</summary>
internal enum PlanNeed
{
    Optional,
    Required,

    /// <summary>Exactly one of the fields so marked.</summary>
    OneOf,
}

/// <summary>One field of a part of the plan file: all that is known of it stands in its one declaration.</summary>
/// <param name="name">Name in the file.</param>
/// <param name="need">Whether it must be there.</param>
/// <param name="meaning">One sentence for schema, page and messages.</param>
internal abstract class PlanField(string name, PlanNeed need, string meaning)
{
    internal string Name => name;

    internal PlanNeed Need => need;

    internal string Meaning => meaning;

    internal abstract PlanValue Value { get; }

    /// <summary>What stands in the field; null when that could not be read and was reported.</summary>
    internal abstract object? Read(PlanNode node, PlanPart at);
}

/// <summary>A field that is read into one type.</summary>
internal abstract class PlanField<TRead>(string name, PlanNeed need, string meaning) : PlanField(name, need, meaning);

/// <summary>A field that is written from another type.</summary>
internal sealed class PlanField<TRead, TWrite>(string name, PlanNeed need, PlanValue<TRead, TWrite> value, string meaning)
    : PlanField<TRead>(name, need, meaning)
{
    internal override PlanValue Value => value;

    internal override object? Read(PlanNode node, PlanPart at) => value.TryRead(node, at, out var found) ? found : null;
}
