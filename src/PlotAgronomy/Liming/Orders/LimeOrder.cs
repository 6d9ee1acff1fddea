using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>How much of a real material to buy for a plot, in which parts, and what it costs.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed partial class LimeOrder : IWorkedResult
{
    private readonly LimePlacementRule? rule;
    private readonly LimeSplit split;
    private readonly double neededPounds;
    private readonly double appliedPounds;
    private readonly double productPounds;

    /// <summary>The steps from a rate to an order, in their order.</summary>
    private LimeOrder(LimeOrderRequest request)
    {
        LimeOrderChecks.Check(request);
        Request = request;
        double acres = request.Area.Acres;
        rule = LimePlacementRule.FindForInstitution(request.Rate.Institution, request.Placement);
        var exact =
            LimeCautions.IsAtTarget(request.Soil, request.Rate) || LimeCautions.IsCausticNearSeed(request)
                ? request.Rate.With(ApplicationRate.Zero)
                : LessEarlierLime(request);
        BasisRate = AtWorkedDepth(request.Rounding is { } rounding ? exact.With(rounding.Apply(exact.OfBasis)) : exact);
        ProductPerBasis = BasisRate.FactorFor(request.Material);
        ExactProductRate = InProduct(AtWorkedDepth(exact));
        ProductRate = InProduct(BasisRate);
        appliedPounds = LimeSums.InOtherLime(LimeApplication.PoundsOfBasis(request.AlreadyApplied, BasisRate), ProductPerBasis);
        neededPounds = LimeSums.ForArea(ProductRate.PoundsPerAcre, acres, 0);
        productPounds = IsDust(neededPounds - appliedPounds, neededPounds)
            ? 0
            : LimeSums.ForArea(ProductRate.PoundsPerAcre, acres, appliedPounds);
        split = new LimeSplit(request, rule, productPounds, StillRecommended, ProductPerBasis);
        Dressings = split.Dressings;
        Bags = request.Package.IsWhole ? Package.RoundUp(productPounds / request.Package.Pounds) : null;
    }

    /// <summary>Gets what was asked.</summary>
    public LimeOrderRequest Request { get; }

    /// <summary>Gets the rate after earlier lime, the rounding asked for and depth, still in the lime of its
    /// institution.</summary>
    public LimeRate BasisRate { get; }

    /// <summary>Gets the material's tons for each ton of the basis: the effectiveness of the basis divided by that of the
    /// product, a pure number.</summary>
    public double ProductPerBasis { get; }

    /// <summary>Gets the rate of product that the recommendation asks for before any rounding.</summary>
    public ApplicationRate ExactProductRate { get; }

    /// <summary>Gets the rate of product for the recommendation as rounded; the exact rate when no rounding was asked
    /// for.</summary>
    public ApplicationRate ProductRate { get; }

    /// <summary>Gets the product already on the plot against this need, counted in the product ordered.</summary>
    public Mass AlreadyApplied => Mass.FromPounds(appliedPounds);

    /// <summary>Gets the mass of product still to put on.</summary>
    public Mass Product => Mass.FromPounds(productPounds);

    /// <summary>Gets the whole bags to buy, or null for lime in bulk.</summary>
    public int? Bags { get; }

    /// <summary>Gets the cost in the plan's currency, of whole bags or of tons; null when no price was given.</summary>
    public decimal? Cost =>
        Request.Price is { } price ? price * (Bags ?? (decimal)(productPounds / Request.Package.Pounds)) : null;

    /// <summary>Gets the magnesium that comes with it, or null when the material's share is not known.</summary>
    public Mass? Magnesium => Request.Material.MagnesiumIn(Product);

    /// <summary>Gets the parts it goes on in; empty when nothing is left to put on. They sum to <see cref="Product"/>.</summary>
    public ImmutableArray<LimeDressing> Dressings { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(FindingsInTurn());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. Request
                .Rate.Basis.Origin.Sources.Concat(Request.Rate.Basis.Figure?.Index.Origin.Sources ?? [])
                .Concat(rule?.Origin.Sources ?? [])
                .Concat(OnSurface?.Origin.Sources ?? [])
                .Distinct(),
        ];

    /// <summary>Makes the order.</summary>
    /// <param name="request">Plot, rate, material and way of putting it on.</param>
    /// <returns>The order.</returns>
    /// <exception cref="ArgumentException">A value outside its range, or a price without what it is the price of.</exception>
    /// <exception cref="InvalidOperationException">The material neutralizes nothing, or its figure in the index of the rate's
    /// basis is not known.</exception>
    /// <remarks>No lime where the soil is at the pH aimed at or above it, and no caustic lime near the seed; else base rate -
    /// earlier lime; rounding when asked for; x depth worked / depth of the rate; x effectiveness of the basis / of the product;
    /// less what is already on; split at the most that goes on at once; x area.</remarks>
    public static LimeOrder For(LimeOrderRequest request) => new(request);

    private static bool IsDust(double difference, double whole) => Math.Abs(difference) <= Tolerance.Dust * Math.Max(1, whole);

    /// <summary>Common practice on the surface, where the institution prints no rule or no limit.</summary>
    private LimePlacementRule? OnSurface =>
        Request.Placement == LimePlacement.Surface ? LimePlacementRule.PracticeOnSurface : null;

    /// <summary>A report that prints its own most at once has its own rule, and no depth but that of its rate.</summary>
    private Length UnstatedDepth(LimeRate rate) =>
        rule is null && Request.MostAtOnce is not null ? rate.Depth : LimePlacementRule.DepthOf(rate, Request.Placement);

    private ApplicationRate InProduct(LimeRate rate) =>
        ApplicationRate.FromPoundsPerAcre(LimeSums.InOtherLime(rate.OfBasis.PoundsPerAcre, ProductPerBasis));

    private LimeRate AtWorkedDepth(LimeRate rate)
    {
        double from = rate.Depth.Inches;
        var treated = Request.WorkedDepth ?? UnstatedDepth(rate);
        double to = treated.Inches;
        return Tolerance.AreEqual(to, from) ? rate : rate.AtDepth(treated);
    }

    private static LimeRate LessEarlierLime(LimeOrderRequest request)
    {
        var rate = request.Rate;
        return request.EarlierLime is { } earlier
            ? rate.With(
                ApplicationRate.FromPoundsPerAcre(
                    earlier.TakeOff(rate.OfBasis.PoundsPerAcre, rate.Institution, request.SoilClass)
                )
            )
            : rate;
    }

    /// <summary>The rate still to go on, of what was recommended.</summary>
    private ApplicationRate StillRecommended => BasisRate.OfBasis * (neededPounds > 0 ? productPounds / neededPounds : 0);

    private IEnumerable<Finding> FindingsInTurn()
    {
        if (LimeCautions.OfTarget(Request.Soil, Request.Rate) is { } above)
        {
            yield return above;
        }

        if (LimeCautions.OfSeed(Request) is { } near)
        {
            yield return near;
        }

        foreach (
            var slip in Request
                .AlreadyApplied.Select(a => a.Material)
                .Append(Request.Material)
                .Distinct()
                .SelectMany(m => m.Check())
        )
        {
            yield return slip;
        }

        if (Request.EarlierLime is not null && !EarlierLime.IsCreditedBy(Request.Rate.Institution))
        {
            yield return EarlierLime.NoCreditFrom(Request.Rate.Institution);
        }

        double from = Request.Rate.Depth.Inches;
        double to = BasisRate.Depth.Inches;
        if (!Tolerance.AreEqual(to, from))
        {
            yield return FindingCatalog.Create(
                LimingCodes.DepthChanged,
                ("from", Amounts.Print(from, 2)),
                ("to", Amounts.Print(to, 2))
            );
        }

        foreach (var finding in split.Findings())
        {
            yield return finding;
        }

        foreach (
            var finding in LimeMaterialCautions.Of(Request, rule, BasisRate.Depth, ProductRate, isAnyDue: productPounds > 0)
        )
        {
            yield return finding;
        }

        if (neededPounds > 0)
        {
            foreach (var surplus in LimeSurplus.Findings(100 * (appliedPounds - neededPounds) / neededPounds))
            {
                yield return surplus;
            }
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
