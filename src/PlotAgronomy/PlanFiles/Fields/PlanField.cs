using System.Collections.Immutable;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>Whether a field must be there.</summary>
internal enum PlanNeed
{
    Optional,
    Required,

    /// <summary>Exactly one of the fields so marked.</summary>
    OneOf,
}

/// <summary>One field of a part of the plan file, as the schema and the page say it.</summary>
/// <param name="name">Name in the file.</param>
/// <param name="need">Whether it must be there.</param>
/// <param name="meaning">One sentence for schema, page and messages.</param>
internal abstract class PlanField(string name, PlanNeed need, string meaning)
{
    internal string Name => name;

    internal PlanNeed Need => need;

    internal string Meaning => meaning;

    /// <summary>Codes of the questions that it answers.</summary>
    internal ImmutableArray<string> Answered { get; private protected set; } = [];

    /// <summary>Whether it may say in words that nothing is stated.</summary>
    internal bool MayBeNotStated => need == PlanNeed.Optional;

    /// <summary>What it may hold, as the page says it.</summary>
    internal abstract string InWords { get; }

    /// <summary>The part of the file that stands in it; null for a plain value.</summary>
    internal abstract IPlanDefinition? Definition { get; }

    /// <summary>Whether several of them stand in it.</summary>
    internal abstract bool IsList { get; }

    /// <summary>Writes the rules of what it may hold into an object of the schema.</summary>
    internal abstract void Describe(Utf8JsonWriter schema);
}

/// <summary>A field that is read into one type.</summary>
internal abstract class PlanField<TRead>(string name, PlanNeed need, string meaning) : PlanField(name, need, meaning)
{
    /// <summary>Declares which questions it answers.</summary>
    internal PlanField<TRead> Answers(params ReadOnlySpan<string> codes)
    {
        Answered = [.. codes];
        return this;
    }
}

/// <summary>A part of the plan file that has a name of its own in the schema.</summary>
internal interface IPlanDefinition
{
    string Name { get; }

    /// <summary>One sentence for schema, page and messages.</summary>
    string Meaning { get; }

    /// <summary>Its fields in the order of the page; none when it is no object.</summary>
    IReadOnlyList<PlanField> Fields { get; }

    /// <summary>Its fields of which exactly one must be there.</summary>
    IReadOnlyList<PlanField> OneOf => [];

    /// <summary>Writes its rules into its place in the schema.</summary>
    void Define(Utf8JsonWriter schema);
}
