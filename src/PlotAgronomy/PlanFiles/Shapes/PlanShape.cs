using System.Collections.Immutable;

namespace PlotAgronomy.PlanFiles;

/// <summary>What kind of value a field of the plan file holds.</summary>
internal enum FieldKind
{
    Text,
    Amount,
    Number,
    Date,
    Choice,
    Flag,
    Object,
    List,
}

/// <summary>One field of a plan file: its name, kind, whether it must be there, and what it means.</summary>
/// <param name="Name">Name in the file.</param>
/// <param name="Kind">Kind of value.</param>
/// <param name="Meaning">One sentence for the schema and for messages.</param>
internal sealed record PlanField(string Name, FieldKind Kind, string Meaning)
{
    internal bool Required { get; init; }

    /// <summary>Example for messages; of an amount with its unit.</summary>
    internal string Example { get; init; } = "";

    /// <summary>Allowed words of a choice.</summary>
    internal ImmutableArray<string> Choices { get; init; } = [];

    /// <summary>Smallest and largest number.</summary>
    internal (double Min, double Max)? Range { get; init; }

    /// <summary>Shape of an object, or of each item of a list.</summary>
    internal PlanShape? Shape { get; init; }

    /// <summary>Fewest items of a list.</summary>
    internal int FewestItems { get; init; }
}

/// <summary>The fields of one object of the plan file. The JSON Schema and the reader's checks both come from here.</summary>
/// <param name="Name">Name of the shape in the schema.</param>
/// <param name="Meaning">One sentence for the schema.</param>
/// <param name="Fields">All fields, in the order of the documentation.</param>
internal sealed record PlanShape(string Name, string Meaning, ImmutableArray<PlanField> Fields)
{
    /// <summary>Groups of fields of which exactly one must be there.</summary>
    internal ImmutableArray<ImmutableArray<string>> ExactlyOneOf { get; init; } = [];

    /// <summary>Pairs of numbers in a list, such as latitude and longitude, instead of an object.</summary>
    internal bool IsPairOfNumbers { get; init; }
}
