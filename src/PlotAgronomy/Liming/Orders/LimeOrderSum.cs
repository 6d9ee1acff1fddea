using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>The steps from a rate to an order, in their order.</summary>
internal sealed class LimeOrderSum
{
    private readonly LimeOrderTerms terms;
    private readonly LimePlacementRule? rule;
    private readonly List<Finding> findings = [];

    internal LimeOrderSum(LimeOrderTerms terms)
    {
        LimeOrderChecks.Check(terms);
        this.terms = terms;
        double acres = terms.Area.Acres;
        rule = LimePlacementRule.FindForInstitution(terms.Rate.Institution, terms.Placement);
        BasisRate = AtWorkedDepth(terms.EarlierLime?.TakeOff(terms.Rate, terms.SoilClass, findings) ?? terms.Rate);
        ProductPerBasis = BasisRate.FactorFor(terms.Material);
        ExactProductRate = ApplicationRate.FromPoundsPerAcre(
            LimeSums.InOtherLime(BasisRate.OfBasis.PoundsPerAcre, ProductPerBasis)
        );
        ProductRate = terms.Rounding?.Apply(ExactProductRate) ?? ExactProductRate;
        AppliedPounds = LimeSums.InOtherLime(terms.AlreadyApplied.Sum(a => a.PoundsOfBasis(BasisRate)), ProductPerBasis);
        double needed = LimeSums.ForArea(ProductRate.PoundsPerAcre, acres, 0);
        ProductPounds = IsDust(needed - AppliedPounds, needed)
            ? 0
            : LimeSums.ForArea(ProductRate.PoundsPerAcre, acres, AppliedPounds);
        Dressings = new LimeSplit(terms, rule, acres, findings).Of(ProductPounds);
        double? bagPounds = terms.Bag?.Pounds;
        Bags = bagPounds is { } bag ? WholePackages.RoundUp(ProductPounds / bag) : null;
        AddFindings(ProductRate, ProductPounds);
        if (needed > 0)
        {
            findings.AddRange(LimeSurplus.Findings(100 * (AppliedPounds - needed) / needed));
        }
    }

    internal LimeRate BasisRate { get; }

    internal double ProductPerBasis { get; }

    internal ApplicationRate ExactProductRate { get; }

    internal ApplicationRate ProductRate { get; }

    internal double AppliedPounds { get; }

    /// <summary>Pounds still to put on.</summary>
    internal double ProductPounds { get; }

    internal int? Bags { get; }

    internal decimal? Cost =>
        terms.PricePerBag is { } perBag ? perBag * Bags!.Value
        : terms.PricePerTon is { } perTon ? perTon * (decimal)(ProductPounds / ExactUnits.PoundsPerShortTon)
        : null;

    internal Mass? Magnesium => terms.Material.MagnesiumIn(Mass.FromPounds(ProductPounds));

    internal ImmutableArray<LimeDressing> Dressings { get; }

    internal ImmutableArray<Finding> Findings => Finding.InOrder(findings);

    internal ImmutableArray<string> SourceIds =>
        [
            .. new[] { terms.Rate.Basis.SourceId, terms.Rate.Basis.Figure?.Index.SourceId, rule?.SourceId }
                .OfType<string>()
                .Distinct(),
        ];

    private static bool IsDust(double difference, double whole) => Math.Abs(difference) <= Tolerance.Dust * Math.Max(1, whole);

    private LimeRate AtWorkedDepth(LimeRate rate)
    {
        double from = rate.Depth.Inches;
        double? worked = terms.WorkedDepth?.Inches;
        double? to = worked ?? rule?.TreatedDepthInches;
        if (to is not { } inches || Tolerance.AreEqual(inches, from))
        {
            return rate;
        }

        findings.Add(
            FindingCatalog.Create(LimingCodes.DepthChanged, ("from", Amounts.Print(from, 2)), ("to", Amounts.Print(inches, 2)))
        );
        return rate.AtDepth(Length.FromInches(inches));
    }

    private void AddFindings(ApplicationRate rate, double left)
    {
        var material = terms.Material;
        var figure = terms.Rate.Basis.Figure;
        if (figure is null)
        {
            findings.Add(FindingCatalog.Create(LimingCodes.BasisUnstated));
        }
        else if (figure.Index == LimeIndex.CalciumCarbonateEquivalent)
        {
            findings.Add(FindingCatalog.Create(LimingCodes.FinenessNotCounted, ("basis", terms.Rate.Basis.Name)));
        }
        else if (figure.Index.Status == DataStatus.Memory && !material.StatedFigures.Any(f => f.Index == figure.Index))
        {
            findings.Add(MemoryGate.FindingFor(figure.Index.Name, figure.Index.SourceId));
        }

        if (terms.Placement == LimePlacement.Surface && left > 0)
        {
            findings.Add(FindingCatalog.Create(LimingCodes.SurfaceSlow));
            if (rule is null)
            {
                findings.Add(FindingCatalog.Create(LimingCodes.NoSurfaceRule, ("institution", terms.Rate.Institution.Name)));
            }
        }

        foreach (var application in terms.AlreadyApplied.Where(a => !a.Material.Neutralizes))
        {
            findings.Add(FindingCatalog.Create(LimingCodes.NoNeutralizingValue, ("material", application.Material.Name)));
        }

        if (terms.WithUreaOrAmmonium)
        {
            findings.Add(FindingCatalog.Create(LimingCodes.WithNitrogen));
        }

        findings.AddRange(LimeCautions.OfMagnesium(terms.Report, material));
        findings.AddRange(LimeCautions.Of(material, rate));
    }
}
