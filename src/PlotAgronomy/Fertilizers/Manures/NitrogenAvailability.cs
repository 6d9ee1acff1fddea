namespace PlotAgronomy.Fertilizers;

/// <summary>Part of a manure's total nitrogen that a crop gets this season. It is not the part of its phosphorus.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record NitrogenAvailability
{
    private NitrogenAvailability(Fraction ofTotal) => OfTotal = ofTotal;

    /// <summary>Gets the part of the total nitrogen.</summary>
    public Fraction OfTotal { get; }

    /// <summary>A part stated by the user.</summary>
    /// <param name="ofTotal">Part of the total nitrogen.</param>
    /// <returns>The availability.</returns>
    public static NitrogenAvailability FromFraction(Fraction ofTotal) => new(ofTotal);

    /// <summary>A published part.</summary>
    /// <param name="row">Row that is of total nitrogen.</param>
    /// <returns>The availability.</returns>
    /// <exception cref="ArgumentException">The row is of another pool, such as phosphorus or organic nitrogen alone.</exception>
    public static NitrogenAvailability FromPublished(ManureAvailability row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return row.Pool == ManurePool.TotalNitrogen
            ? new(row.Available)
            : throw new ArgumentException($"'{row.Id}' is no part of total nitrogen.", nameof(row));
    }

    /// <summary>The part in percent.</summary>
    /// <returns>Text such as <c>60 % of total N</c>.</returns>
    public override string ToString() => $"{Amounts.Print(OfTotal.Percent, 2)} % of total N";
}
