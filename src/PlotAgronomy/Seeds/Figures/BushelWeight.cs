using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>Legal or trade weight of a bushel. A volume guide only: weigh the hopper.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class BushelWeight
{
    /// <summary>Gets the lightest published density.</summary>
    public required Density Low { get; init; }

    /// <summary>Gets the heaviest published density.</summary>
    public required Density High { get; init; }

    /// <summary>Gets the sources.</summary>
    public required Origin Evidence
    {
        get;
        init => field = Guard.NotNull(value, nameof(Evidence));
    }

    internal static BushelWeight? Of(KindObservations kind)
    {
        if (kind.Find("bushel-weight") is not { } found)
        {
            return null;
        }

        var (low, high) = found.Range("lb/bu");
        return new()
        {
            Low = Density.FromPoundsPerCubicFoot(low / ExactUnits.CubicFeetPerBushel),
            High = Density.FromPoundsPerCubicFoot(high / ExactUnits.CubicFeetPerBushel),
            Evidence = found.Origin,
        };
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Low, "lb/bu", 1)} to {Amounts.Print(High, "lb/bu", 1)}";
}
