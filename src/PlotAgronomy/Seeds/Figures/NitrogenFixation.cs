namespace PlotAgronomy.Seeds;

/// <summary>Nitrogen a legume fixes in a year, as N.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class NitrogenFixation
{
    /// <summary>Gets the nitrogen fixed where the legume is about a quarter of the stand.</summary>
    public required ApplicationRate QuarterStand { get; init; }

    /// <summary>Gets the nitrogen fixed by a pure stand in good conditions.</summary>
    public required ApplicationRate PureStand { get; init; }

    /// <summary>Gets the sources.</summary>
    public required Origin Evidence
    {
        get;
        init => field = Guard.NotNull(value, nameof(Evidence));
    }

    /// <summary>A published range is taken to run from a quarter of the stand to a pure one.</summary>
    internal static NitrogenFixation? Of(KindObservations kind) =>
        PrintedSpan.Of(kind, "nitrogen-fixed", null, ["lb-n/ac"]) is { } span
            ? new()
            {
                QuarterStand = ApplicationRate.FromPoundsPerAcre(span.Low),
                PureStand = ApplicationRate.FromPoundsPerAcre(span.High),
                Evidence = span.Origin,
            }
            : null;

    /// <summary>A quarter and a whole stand.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Amounts.Print(QuarterStand, decimals: 0)} of N as a quarter of the stand, "
        + $"{Amounts.Print(PureStand, decimals: 0)} alone";
}
