namespace PlotAgronomy.Liming;

/// <summary>Checks what an order is asked for.</summary>
internal static class LimeOrderChecks
{
    /// <exception cref="ArgumentException">A value outside its range.</exception>
    internal static void Check(LimeOrderRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(request.Rate);
        ArgumentNullException.ThrowIfNull(request.Material);
        Guard.Positive(request.Area, nameof(request.Area));
        Guard.Defined(request.Placement);
        ArgumentNullException.ThrowIfNull(request.Package);
        if (request.Price is { } price)
        {
            Guard.AtLeast(price, 0, "(money)", nameof(request.Price));
        }

        if (request.MonthsBetween is { } months)
        {
            Guard.AtLeast(months, 1, "months", nameof(request.MonthsBetween));
        }

        if (request.MostAtOnce is { } most)
        {
            Guard.AtLeast(most.PoundsPerAcre, LimingConstants.All["least-at-once"], "lb/ac", nameof(request.MostAtOnce));
        }
    }
}
