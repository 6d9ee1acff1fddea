using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>One part of a split application.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeDressing
{
    internal LimeDressing() { }

    /// <summary>Gets the number of the part, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Gets the months after the first part.</summary>
    public required int MonthsAfterFirst { get; init; }

    /// <summary>Gets the day, or null when none was given for the first part.</summary>
    public DateOnly? On { get; init; }

    /// <summary>Gets where it goes.</summary>
    public required LimePlacement Placement { get; init; }

    /// <summary>Gets the rate of product.</summary>
    public required ApplicationRate Rate { get; init; }

    /// <summary>Gets the mass of product on the plot.</summary>
    public required Mass Mass { get; init; }

    /// <summary>Gets the whole bags, or null for lime in bulk.</summary>
    public int? Bags { get; init; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"dressing {Amounts.Print(Number, 0)}: {Amounts.Print(Mass, "lb", 1)}";
}
