using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>How deep a kind's seed is placed.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PlantingDepth
{
    /// <summary>Gets the shallowest placement; zero is the surface, rolled.</summary>
    public required Length Shallowest { get; init; }

    /// <summary>Gets the deepest placement.</summary>
    public required Length Deepest { get; init; }

    /// <summary>Gets the sources.</summary>
    public required Origin Evidence
    {
        get;
        init => field = Guard.NotNull(value, nameof(Evidence));
    }

    internal static PlantingDepth? Of(KindObservations kind) =>
        PrintedSpan.Of(kind, "depth", null, ["in"]) is { } span
            ? new()
            {
                Shallowest = Length.FromInches(span.Low),
                Deepest = Length.FromInches(span.High),
                Evidence = span.Origin,
            }
            : null;

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Shallowest, "in", 2)} to {Amounts.Print(Deepest, "in", 2)}";
}
