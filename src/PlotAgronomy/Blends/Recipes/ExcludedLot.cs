using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>A lot that was not considered, and why.</summary>
public sealed class ExcludedLot
{
    /// <summary>Gets the lot.</summary>
    public required SeedLot Lot { get; init; }

    /// <summary>Gets the reason in words.</summary>
    public required string Reason { get; init; }

    /// <summary>The lot and the reason.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Lot.Label}: {Reason}";
}
