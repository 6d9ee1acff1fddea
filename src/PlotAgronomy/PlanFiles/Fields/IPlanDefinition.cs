using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>A part of the plan file that has a name of its own in the schema.</summary>
internal interface IPlanDefinition
{
    string Name { get; }

    /// <summary>One sentence for schema, page and messages.</summary>
    string Meaning { get; }

    /// <summary>Its fields in the order of the page; none when it is no object.</summary>
    IReadOnlyList<PlanField> Fields { get; }

    /// <summary>Writes its rules into its place in the schema.</summary>
    void Define(Utf8JsonWriter schema);
}
