namespace PlotAgronomy.Seeds;

/// <summary>Soil pH a kind stands and the band to aim for, all in water.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PhTolerance
{
    private const string Figure = "soil-ph";
    private const string Unit = "ph";

    /// <summary>Gets the lowest pH tolerated.</summary>
    public required double MinimumPh { get; init; }

    /// <summary>Gets the lower end of the band to aim for.</summary>
    public required double BestPhFrom { get; init; }

    /// <summary>Gets the upper end of the band to aim for.</summary>
    public required double BestPhTo { get; init; }

    /// <summary>Gets the highest pH tolerated.</summary>
    public required double MaximumPh { get; init; }

    /// <summary>Gets the sources of the limits.</summary>
    public required Origin Evidence
    {
        get;
        init => field = Guard.NotNull(value, nameof(Evidence));
    }

    /// <summary>Gets the sources of the band to aim for; those of the limits when nothing else is said.</summary>
    public Origin BestEvidence
    {
        get => field ?? Evidence;
        init => field = Guard.NotNull(value, nameof(BestEvidence));
    }

    internal static PhTolerance? Of(KindObservations kind)
    {
        if (kind.Find(Figure, "tolerated") is not { } tolerated)
        {
            return null;
        }

        var best = kind.Need(Figure, "best");
        var (minimum, maximum) = tolerated.Range(Unit);
        var (bestFrom, bestTo) = best.Range(Unit);
        return new()
        {
            MinimumPh = minimum,
            BestPhFrom = bestFrom,
            BestPhTo = bestTo,
            MaximumPh = maximum,
            Evidence = tolerated.Origin,
            BestEvidence = best.Origin,
        };
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"pH {Amounts.Print(MinimumPh, 1)} to {Amounts.Print(MaximumPh, 1)}";
}
