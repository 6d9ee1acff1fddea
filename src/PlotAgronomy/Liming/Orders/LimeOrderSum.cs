using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>The steps from a rate to an order, in their order.</summary>
internal sealed class LimeOrderSum
{
    private readonly LimeOrderRequest request;
    private readonly LimePlacementRule? rule;
    private readonly LimeSplit split;
    private readonly double neededPounds;

    internal LimeOrderSum(LimeOrderRequest request)
    {
        LimeOrderChecks.Check(request);
        this.request = request;
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
        AppliedPounds = LimeSums.InOtherLime(LimeApplication.PoundsOfBasis(request.AlreadyApplied, BasisRate), ProductPerBasis);
        neededPounds = LimeSums.ForArea(ProductRate.PoundsPerAcre, acres, 0);
        ProductPounds = IsDust(neededPounds - AppliedPounds, neededPounds)
            ? 0
            : LimeSums.ForArea(ProductRate.PoundsPerAcre, acres, AppliedPounds);
        split = new LimeSplit(
            request,
            rule,
            acres,
            ProductPounds,
            new(BasisRate, ProductPerBasis, neededPounds > 0 ? ProductPounds / neededPounds : 0)
        );
        Dressings = split.Dressings;
        Bags = request.Package.IsWhole ? Package.RoundUp(ProductPounds / request.Package.Pounds) : null;
    }

    internal LimeOrderRequest Request => request;

    internal LimeRate BasisRate { get; }

    internal double ProductPerBasis { get; }

    internal ApplicationRate ExactProductRate { get; }

    internal ApplicationRate ProductRate { get; }

    internal double AppliedPounds { get; }

    /// <summary>Pounds still to put on.</summary>
    internal double ProductPounds { get; }

    internal int? Bags { get; }

    internal decimal? Cost =>
        request.Price is { } price ? price * (Bags ?? (decimal)(ProductPounds / request.Package.Pounds)) : null;

    internal Mass? Magnesium => request.Material.MagnesiumIn(Mass.FromPounds(ProductPounds));

    internal ImmutableArray<LimeDressing> Dressings { get; }

    internal ImmutableArray<Finding> Findings => Finding.InOrder(FindingsInTurn());

    internal ImmutableArray<Source> Sources =>
        [
            .. request
                .Rate.Basis.Origin.Sources.Concat(request.Rate.Basis.Figure?.Index.Origin.Sources ?? [])
                .Concat(rule?.Origin.Sources ?? [])
                .Concat(OnSurface?.Origin.Sources ?? [])
                .Distinct(),
        ];

    private static bool IsDust(double difference, double whole) => Math.Abs(difference) <= Tolerance.Dust * Math.Max(1, whole);

    /// <summary>Common practice on the surface, where the institution prints no rule or no limit.</summary>
    private LimePlacementRule? OnSurface =>
        request.Placement == LimePlacement.Surface ? LimePlacementRule.PracticeOnSurface : null;

    /// <summary>A report that prints its own most at once has its own rule, and no depth but that of its rate.</summary>
    private Length UnstatedDepth(LimeRate rate) =>
        rule is null && request.MostAtOnce is not null ? rate.Depth : LimePlacementRule.DepthOf(rate, request.Placement);

    private ApplicationRate InProduct(LimeRate rate) =>
        ApplicationRate.FromPoundsPerAcre(LimeSums.InOtherLime(rate.OfBasis.PoundsPerAcre, ProductPerBasis));

    private LimeRate AtWorkedDepth(LimeRate rate)
    {
        double from = rate.Depth.Inches;
        var treated = request.WorkedDepth ?? UnstatedDepth(rate);
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

    private IEnumerable<Finding> FindingsInTurn()
    {
        if (LimeCautions.OfTarget(request.Soil, request.Rate) is { } above)
        {
            yield return above;
        }

        if (LimeCautions.OfSeed(request) is { } near)
        {
            yield return near;
        }

        foreach (
            var slip in request
                .AlreadyApplied.Select(a => a.Material)
                .Append(request.Material)
                .Distinct()
                .SelectMany(m => m.Check())
        )
        {
            yield return slip;
        }

        if (request.EarlierLime is not null && !EarlierLime.IsCreditedBy(request.Rate.Institution))
        {
            yield return EarlierLime.NoCreditFrom(request.Rate.Institution);
        }

        double from = request.Rate.Depth.Inches;
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

        foreach (var finding in MaterialFindings())
        {
            yield return finding;
        }

        if (neededPounds > 0)
        {
            foreach (var surplus in LimeSurplus.Findings(100 * (AppliedPounds - neededPounds) / neededPounds))
            {
                yield return surplus;
            }
        }
    }

    private IEnumerable<Finding> MaterialFindings()
    {
        var material = request.Material;
        var basis = request.Rate.Basis;
        var figure = basis.Figure;
        if (basis.Status == DataStatus.Memory)
        {
            yield return MemoryGate.FindingFor($"the lime '{basis.Name}'", basis.Origin);
        }

        if (figure is null)
        {
            yield return FindingCatalog.Create(LimingCodes.BasisUnstated);
        }
        else if (request.Rate.IndexFor(material) is null)
        {
            yield return FindingCatalog.Create(LimingCodes.CountedAsAgLime, ("basis", basis.Name), ("material", material.Name));
        }
        else if (figure.Index == LimeIndex.CalciumCarbonateEquivalent)
        {
            yield return FindingCatalog.Create(LimingCodes.FinenessNotCounted, ("basis", basis.Name));
        }
        else if (figure.Index.Status == DataStatus.Memory && !material.StatedFigures.Any(f => f.Index == figure.Index))
        {
            yield return MemoryGate.FindingFor(figure.Index.Name, figure.Index.Origin);
        }

        if (request.Placement == LimePlacement.Surface && ProductPounds > 0)
        {
            yield return FindingCatalog.Create(LimingCodes.SurfaceSlow);
            if (rule is null)
            {
                var practice = LimePlacementRule.PracticeOnSurface;
                yield return FindingCatalog.Create(
                    LimingCodes.NoSurfaceRule,
                    ("institution", request.Rate.Institution.Name),
                    ("depth", LimeText.Inches(BasisRate.Depth)),
                    ("most", LimeText.Tons((request.MostAtOnce ?? practice.MostAtOnce!.Value).PoundsPerAcre))
                );
            }
            else if (rule.Origin.Status == DataStatus.Memory)
            {
                yield return MemoryGate.FindingFor($"the rule of {rule.Institution} for lime on the surface", rule.Origin);
            }
        }

        foreach (var application in request.AlreadyApplied.Where(a => !a.Material.Neutralizes))
        {
            yield return FindingCatalog.Create(LimingCodes.NoNeutralizingValue, ("material", application.Material.Name));
        }

        if (request.WithUreaOrAmmonium)
        {
            yield return FindingCatalog.Create(LimingCodes.WithNitrogen);
        }

        foreach (var caution in LimeCautions.OfMagnesium(request.Soil?.Report, material))
        {
            yield return caution;
        }

        foreach (var caution in LimeCautions.Of(material, ProductRate))
        {
            yield return caution;
        }
    }
}
