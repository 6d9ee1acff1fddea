namespace PlotAgronomy.Liming;

/// <summary>Checks what an order is asked for.</summary>
internal static class LimeOrderChecks
{
    /// <exception cref="ArgumentException">A value outside its range, or a price without what it is the price of.</exception>
    internal static void Check(LimeOrderTerms terms)
    {
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentNullException.ThrowIfNull(terms.Rate);
        ArgumentNullException.ThrowIfNull(terms.Material);
        double acres = terms.Area.Acres;
        Guard.Above(acres, 0, "ac", nameof(terms.Area));
        Guard.Defined(terms.Placement);
        Guard.Defined(terms.SoilClass);
        if (terms.Bag is { } mass)
        {
            double bagPounds = mass.Pounds;
            Guard.Above(bagPounds, 0, "lb", nameof(terms.Bag));
        }

        if (terms.PricePerBag is { } perBag)
        {
            Guard.AtLeast(perBag, 0, "(money)", nameof(terms.PricePerBag));
            if (terms.Bag is null)
            {
                throw new ArgumentException("A price per bag needs the mass of a bag.", nameof(terms));
            }
        }

        if (terms.PricePerTon is { } perTon)
        {
            Guard.AtLeast(perTon, 0, "(money)", nameof(terms.PricePerTon));
        }

        if (terms.PricePerBag is not null && terms.PricePerTon is not null)
        {
            throw new ArgumentException("Give a price per bag or per ton, not both.", nameof(terms));
        }

        if (terms.MonthsBetween is { } months)
        {
            Guard.AtLeast(months, 1, "months", nameof(terms.MonthsBetween));
        }

        if (terms.MostAtOnce is { } most)
        {
            Guard.Above(most.PoundsPerAcre, 0, "lb/ac", nameof(terms.MostAtOnce));
        }
    }
}
