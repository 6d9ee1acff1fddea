namespace PlotAgronomy.Liming;

/// <summary>Checks what an order is asked for.</summary>
internal static class LimeOrderChecks
{
    /// <exception cref="ArgumentException">A value outside its range, or a price without what it is the price of.</exception>
    internal static void Check(LimeOrderRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(request.Rate);
        ArgumentNullException.ThrowIfNull(request.Material);
        double acres = request.Area.Acres;
        Guard.Above(acres, 0, "ac", nameof(request.Area));
        Guard.Defined(request.Placement);
        Guard.Defined(request.SoilClass);
        if (request.Bag is { } mass)
        {
            double bagPounds = mass.Pounds;
            Guard.Above(bagPounds, 0, "lb", nameof(request.Bag));
        }

        if (request.PricePerBag is { } perBag)
        {
            Guard.AtLeast(perBag, 0, "(money)", nameof(request.PricePerBag));
            if (request.Bag is null)
            {
                throw new ArgumentException("A price per bag needs the mass of a bag.", nameof(request));
            }
        }

        if (request.PricePerTon is { } perTon)
        {
            Guard.AtLeast(perTon, 0, "(money)", nameof(request.PricePerTon));
        }

        if (request.PricePerBag is not null && request.PricePerTon is not null)
        {
            throw new ArgumentException("Give a price per bag or per ton, not both.", nameof(request));
        }

        if (request.MonthsBetween is { } months)
        {
            Guard.AtLeast(months, 1, "months", nameof(request.MonthsBetween));
        }

        if (request.MostAtOnce is { } most)
        {
            Guard.Above(most.PoundsPerAcre, 0, "lb/ac", nameof(request.MostAtOnce));
        }
    }
}
