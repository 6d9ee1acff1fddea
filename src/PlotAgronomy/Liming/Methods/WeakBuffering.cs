using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>What weakly buffered soil does to an answer: a caution, and a limit to what goes on at once.</summary>
internal static class WeakBuffering
{
    internal static Finding CautionFor(PlotSoil soil) =>
        soil.Capacity is null
            ? FindingCatalog.Create(LimingCodes.SandWeaklyBuffered)
            : FindingCatalog.Create(LimingCodes.WeaklyBuffered, ("cec", InWords(soil)));

    /// <summary>The part of a need that goes on at first: all of it up to the limit, counted over the depth really
    /// limed.</summary>
    internal static LimeRate Capped(LimeMethod method, LimeRate need, Length treated)
    {
        double most = MostTons(method) / Math.Max(1, need.Basis.Figure?.ShareOfWhole ?? 1);
        double tons = need.AtDepth(treated).OfBasis.ShortTonsPerAcre;
        return Tolerance.IsAbove(tons, most) ? need.With(need.OfBasis * (most / tons)) : need;
    }

    /// <summary>The most of any lime at once on such soil, also where a laboratory prints more.</summary>
    internal static ApplicationRate MostOfAny => ApplicationRate.FromShortTonsPerAcre(LimingConstants.All["weak-cap"]);

    internal static Finding FindingFor(LimeMethod method, PlotSoil soil, LimeRate need, LimeRate capped) =>
        FindingCatalog.Create(
            LimingCodes.WeaklyBufferedCapped,
            ("soil", soil.Capacity is null ? "sand" : $"CEC {InWords(soil)}"),
            ("method", method.Name),
            ("need", need.AmountInWords),
            ("part", capped.AmountInWords),
            ("months", Amounts.Print(LimingConstants.All["weak-retest-months"], 0))
        );

    /// <summary>A method made for such soils is kept to the rule's limit for one dressing; any other to its careful first
    /// dressing.</summary>
    private static double MostTons(LimeMethod method) =>
        LimingConstants.All[method.IsForWeakSoils ? "weak-cap" : "weak-first-dressing"];

    /// <summary>As the report prints it, and by weight where that is another figure.</summary>
    private static string InWords(PlotSoil soil) =>
        soil.ExchangeCapacity is { Basis: CationChargeBasis.Per100CubicCentimeters } printed
        && soil.CapacityPer100Grams is { } byWeight
            ? $"{Print(printed)} as printed ({Amounts.Print(byWeight, 1)} meq/100 g by weight)"
            : Print(soil.ExchangeCapacity!.Value);

    private static string Print(CationCharge charge) =>
        $"{Amounts.Print(charge.Milliequivalents, 1)} {SoilWords.For(charge.Basis)}";
}
