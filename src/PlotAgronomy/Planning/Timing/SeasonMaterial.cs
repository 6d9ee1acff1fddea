using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>What is needed for a task, and how much of it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeasonMaterial
{
    internal SeasonMaterial() { }

    /// <summary>Gets the name of lime, fertilizer or kind.</summary>
    public required string Name { get; init; }

    /// <summary>Gets the weight for the plot.</summary>
    public required Mass Mass { get; init; }

    /// <summary>The name and the weight.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Mass, "lb", 2)} of {Name}";
}
