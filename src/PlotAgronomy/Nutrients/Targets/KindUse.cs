namespace PlotAgronomy.Nutrients;

/// <summary>What the user says about one kind of the blend instead of leaving it to the proxy table.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class KindUse
{
    /// <summary>Gets the crop row it is taken as; null takes the nearest row of the system.</summary>
    public CropRow? TakenAs { get; init; }

    /// <summary>Gets the yield hoped for, in the unit of the row; it is asked for, never assumed.</summary>
    public CropYield? Yield { get; init; }

    /// <summary>Gets whether it is harvested and carried off; then a yield is needed.</summary>
    public bool IsCarriedOff { get; init; }

    /// <summary>Gets what leaves the plot, when it is stated instead of the system's own figure; such as
    /// <see cref="CropRemoval.Grazed"/>.</summary>
    public CropRemoval? Removal { get; init; }

    /// <summary>Gets the nitrogen rule; null takes the proxy's.</summary>
    public NitrogenRule? Nitrogen { get; init; }

    /// <summary>What is stated of its use.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Join(
            ", ",
            new object?[]
            {
                TakenAs is { } row ? $"taken as {CropRows.WordsFor(row)}" : null,
                Yield,
                IsCarriedOff ? "carried off" : null,
                Removal,
                Nitrogen,
            }
                .OfType<object>()
                .DefaultIfEmpty("as its kind")
        );
}
