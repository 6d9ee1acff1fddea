using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>The parts an order goes on in.</summary>
/// <remarks>An institution's own limit is held against its recommendation, any other against the product.</remarks>
internal readonly struct LimeSplit
{
    private readonly LimeOrderRequest request;
    private readonly LimePlacementRule? rule;
    private readonly double acres;
    private readonly double pounds;
    private readonly double part;
    private readonly int count;
    private readonly int months;

    /// <param name="request">What was ordered.</param>
    /// <param name="rule">The institution's rule for lime put on this way; null where it prints none.</param>
    /// <param name="pounds">Pounds of the product.</param>
    /// <param name="recommended">What is left to go on of the recommendation, in the lime of its institution.</param>
    /// <param name="productPerBasis">Tons of product for a ton of that lime.</param>
    internal LimeSplit(
        LimeOrderRequest request,
        LimePlacementRule? rule,
        double pounds,
        ApplicationRate recommended,
        double productPerBasis
    )
    {
        this.request = request;
        this.rule = rule;
        acres = request.Area.Acres;
        this.pounds = pounds;
        count = pounds > 0 ? 1 : 0;
        part = pounds;
        if (Most is not { } most)
        {
            return;
        }

        bool byOrder = request.MostAtOnce is not null;
        bool byRule = !byOrder && rule?.MostAtOnce is not null;
        bool ofRecommendation = byRule && !request.Rate.Basis.IsInPounds;
        double perAcre = ofRecommendation ? AsPrinted(recommended).PoundsPerAcre : PoundsPerAcre;
        if (!Tolerance.IsAbove(perAcre, most.PoundsPerAcre))
        {
            return;
        }

        int parts = Package.RoundUp(perAcre / most.PoundsPerAcre);
        count = byRule && rule!.MostDressings is { } fewest ? Math.Min(parts, fewest) : parts;
        double largest = most.PoundsPerAcre * (ofRecommendation ? productPerBasis : 1) * acres;
        part = (!byOrder && Keeper.SplitsEvenly) || count < parts || largest * count < pounds ? pounds / count : largest;
        months = request.MonthsBetween ?? (byOrder ? rule : Keeper)?.MonthsBetween ?? (int)LimingConstants.All["months-between"];
        IsSplit = true;
    }

    internal ImmutableArray<LimeDressing> Dressings
    {
        get
        {
            var dressings = ImmutableArray.CreateBuilder<LimeDressing>(count);
            int beforeSowing = BeforeSowing;
            for (int number = 1; number <= beforeSowing; number++)
            {
                double mass = number < count ? part : pounds - (part * (count - 1));
                dressings.Add(Dressing(number, (number - 1) * months, mass, request.Placement));
            }

            double left = pounds - (part * beforeSowing);
            if (beforeSowing < count && left > 0)
            {
                foreach (var (after, mass) in OnStand.Parts(beforeSowing, months, left, acres))
                {
                    dressings.Add(Dressing(dressings.Count + 1, after, mass, LimePlacement.Surface));
                }
            }

            return dressings.ToImmutable();
        }
    }

    internal IEnumerable<Finding> Findings()
    {
        if (IsHigh)
        {
            yield return FindingCatalog.Create(LimingCodes.RateHigh, ("rate", LimeText.Tons(PoundsPerAcre)));
        }

        if (IsSplit)
        {
            yield return SplitFinding(Most!.Value);
        }

        if (BeforeSowing < count)
        {
            yield return FindingCatalog.Create(
                LimingCodes.LaterOnSurface,
                ("most", LimeText.Tons(OnStand.MostAtOnce.PoundsPerAcre))
            );
        }
    }

    private bool IsSplit { get; }

    private double PoundsPerAcre => pounds / acres;

    /// <summary>As the institution rounds its rates.</summary>
    private ApplicationRate AsPrinted(ApplicationRate rate) =>
        LimeRounding.ForInstitution(request.Rate.Institution)?.Apply(rate) ?? rate;

    private bool IsHigh => pounds > 0 && PoundsPerAcre > LimePlacementRule.HighestAtOnce.PoundsPerAcre;

    private LimePlacementRule? Practice =>
        request.Placement == LimePlacement.Surface ? LimePlacementRule.PracticeOnSurface : null;

    private ApplicationRate? OwnMost => request.MostAtOnce ?? rule?.MostAtOnce;

    private ApplicationRate? Most => OwnMost ?? Practice?.MostAtOnce ?? (IsHigh ? LimePlacementRule.HighestAtOnce : null);

    /// <summary>Whose limit and way of dividing are kept, where the order states no limit of its own.</summary>
    private LimePlacementRule Keeper => rule?.MostAtOnce is not null ? rule : Practice ?? LimePlacementRule.WithHighestLimit;

    private LimeOnStand OnStand => LimeOnStand.By(request.Rate.Institution);

    /// <summary>How many dressings can be worked in before what stands for years is sown.</summary>
    private int BeforeSowing => LimeOnStand.DressingsBeforeSowing(request, count, months);

    private Finding SplitFinding(ApplicationRate most)
    {
        string mostText = LimeText.Tons(most.PoundsPerAcre);
        string whose =
            request.MostAtOnce is not null ? "the most this order allows at once"
            : OwnMost is not null ? $"the most {request.Rate.Institution} puts on at once"
            : Practice is not null ? "the most that common practice leaves on the surface at once"
            : $"the most {LimePlacementRule.WithHighestLimit.Institution} puts on at once, borrowed because "
                + $"{request.Rate.Institution} prints no limit for lime put on this way";
        bool isPrinted =
            request.MonthsBetween is not null
            || (Keeper is { MonthsBetween: not null, Origin.Status: var status } && DataStatuses.IsSeen(status));
        string by = isPrinted ? "" : " by common practice";
        return months == 0
            ? FindingCatalog.Create(
                LimingCodes.SplitPlowed,
                ("most", mostText),
                ("whose", whose),
                ("count", Amounts.Print(count, 0))
            )
            : FindingCatalog.Create(
                LimingCodes.Split,
                ("most", mostText),
                ("whose", whose),
                ("count", Amounts.Print(count, 0)),
                ("months", Amounts.Print(months, 0)),
                ("by", by)
            );
    }

    private LimeDressing Dressing(int number, int after, double mass, LimePlacement placement) =>
        new()
        {
            Number = number,
            MonthsAfterFirst = after,
            On = request.FirstDressingOn is { } first ? LimeOnStand.MonthsAfter(first, after) : null,
            Placement = placement,
            Rate = ApplicationRate.FromPoundsPerAcre(mass / acres),
            Mass = Mass.FromPounds(mass),
            Bags = request.Package.IsWhole ? Package.RoundUp(mass / request.Package.Pounds) : null,
        };
}
