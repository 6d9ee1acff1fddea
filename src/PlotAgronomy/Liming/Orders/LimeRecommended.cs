namespace PlotAgronomy.Liming;

/// <summary>What an order was recommended, which an institution's own limits are held against.</summary>
/// <param name="Rate">Rate in the lime of its institution.</param>
/// <param name="ProductPerBasis">Tons of product for a ton of that lime.</param>
/// <param name="ShareLeft">Part of it that is still to go on.</param>
internal readonly record struct LimeRecommended(LimeRate Rate, double ProductPerBasis, double ShareLeft)
{
    /// <summary>lb/ac still to go on, as the institution rounds its rates.</summary>
    internal double PoundsPerAcre
    {
        get
        {
            var left = Rate.OfBasis * ShareLeft;
            return (LimeRounding.ForInstitution(Rate.Institution)?.Apply(left) ?? left).PoundsPerAcre;
        }
    }
}
