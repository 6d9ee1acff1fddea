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

    /// <summary>A pH that a publication calls best is tolerated too.</summary>
    internal static PhTolerance? Of(KindObservations kind)
    {
        var best = PrintedSpan.Of(kind, Figure, "best", [Unit]);
        var tolerated = PrintedSpan.Of(kind, Figure, "tolerated", [Unit]);
        var floor = PrintedSpan.OfNumbers(kind, Figure, "minimum", Unit);
        if (best is null && tolerated is null)
        {
            return null;
        }

        if (best is null || tolerated is null)
        {
            throw kind.Missing(Figure, best is null ? "best" : "tolerated");
        }

        bool isFloorKnownBetter = floor is not null && tolerated.Publications == 0;
        return new()
        {
            MinimumPh = Math.Min(isFloorKnownBetter ? floor!.Low : tolerated.Low, best.Low),
            BestPhFrom = best.Low,
            BestPhTo = best.High,
            MaximumPh = Math.Max(tolerated.High, best.High),
            Evidence = tolerated.Origin,
            BestEvidence = best.Origin,
        };
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"pH {Amounts.Print(MinimumPh, 1)} to {Amounts.Print(MaximumPh, 1)}";
}
