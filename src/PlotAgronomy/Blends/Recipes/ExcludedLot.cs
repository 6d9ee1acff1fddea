namespace PlotAgronomy.Blends;

/// <summary>A lot that was not considered, and why.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class ExcludedLot
{
    private readonly RecipeRequest request;

    internal ExcludedLot(SeedLot lot, RecipeRequest request, Exclusion why, SeedLot? taken = null)
    {
        this.request = request;
        Lot = lot;
        Why = why;
        Taken = taken;
    }

    /// <summary>Gets the lot.</summary>
    public SeedLot Lot { get; }

    /// <summary>Gets the lot of the same kind that is used in its place; null when there is none.</summary>
    public SeedLot? Taken { get; }

    /// <summary>Gets the reason in words.</summary>
    public string Reason => RecipeReasons.Against(Lot, Why, request, Taken);

    internal Exclusion Why { get; }

    /// <summary>The lot and the reason.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Lot.Label}: {Reason}";
}
