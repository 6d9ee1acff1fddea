namespace PlotAgronomy.Fertilizers;

/// <summary>Part of a manure's total phosphate that a crop gets this season. It is not the part of its nitrogen.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record PhosphateAvailability
{
    private PhosphateAvailability(Fraction ofTotal) => OfTotal = ofTotal;

    /// <summary>Gets all of it, as several states count poultry litter.</summary>
    public static PhosphateAvailability All => new(Fraction.One);

    /// <summary>Gets the part of the total phosphate.</summary>
    public Fraction OfTotal { get; }

    /// <summary>A part stated by the user.</summary>
    /// <param name="ofTotal">Part of the total phosphate.</param>
    /// <returns>The availability.</returns>
    public static PhosphateAvailability FromFraction(Fraction ofTotal) => new(ofTotal);

    /// <summary>A published part.</summary>
    /// <param name="row">Row that is of phosphorus.</param>
    /// <returns>The availability.</returns>
    /// <exception cref="ArgumentException">The row is of nitrogen.</exception>
    public static PhosphateAvailability FromPublished(ManureAvailability row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return row.Pool is ManurePool.PhosphateAndPotash or ManurePool.PhosphorusFirstYear or ManurePool.PhosphorusLater
            ? new(row.Available)
            : throw new ArgumentException($"'{row.Id}' is no part of phosphorus.", nameof(row));
    }

    /// <summary>The part in percent.</summary>
    /// <returns>Text such as <c>40 % of total P2O5</c>.</returns>
    public override string ToString() => $"{Amounts.Print(OfTotal.Percent, 2)} % of total P2O5";
}
