using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>The steps from a rate to an order, in their order.</summary>
internal sealed class LimeOrderWork
{
    /// <summary>Common practice where an institution prints no interval.</summary>
    private const int DefaultMonthsBetween = 12;

    private readonly LimeOrderTerms terms;
    private readonly LimePlacementRule? rule;
    private readonly double acres;
    private readonly List<Finding> findings = [];

    internal LimeOrderWork(LimeOrderTerms terms)
    {
        this.terms = terms;
        ArgumentNullException.ThrowIfNull(terms.Rate);
        ArgumentNullException.ThrowIfNull(terms.Material);
        double areaAcres = terms.Area.Acres;
        acres = Guard.Above(areaAcres, 0, "ac", nameof(terms.Area));
        Guard.Defined(terms.Placement);
        Guard.Defined(terms.SoilClass);
        CheckBuying();
        rule = LimePlacementRule.TryFind(terms.Rate.Institution, terms.Placement);
    }

    internal LimeOrder Order()
    {
        var basisRate = AtWorkedDepth(terms.EarlierLime?.TakeOff(terms.Rate, terms.SoilClass, findings) ?? terms.Rate);
        double factor = basisRate.FactorFor(terms.Material);
        var exact = ApplicationRate.FromPoundsPerAcre(basisRate.OfBasis.PoundsPerAcre * factor);
        var rate = terms.Rounding?.Apply(exact) ?? exact;
        double applied = terms.AlreadyApplied.Sum(a => a.PoundsOfBasis(basisRate)) * factor;
        double needed = rate.PoundsPerAcre * acres;
        double left = IsDust(needed - applied, needed) ? 0 : Math.Max(0, needed - applied);
        var dressings = Split(left);
        double? bagPounds = terms.Bag?.Pounds;
        int? bags = bagPounds is { } bag ? WholePackages.RoundUp(left / bag) : null;
        AddFindings(rate, left);
        if (needed > 0)
        {
            findings.AddRange(LimeSurplus.Findings(100 * (applied - needed) / needed));
        }

        return new LimeOrder(terms)
        {
            BasisRate = basisRate,
            ProductPerBasis = factor,
            ExactProductRate = exact,
            ProductRate = rate,
            AlreadyApplied = Mass.FromPounds(applied),
            Product = Mass.FromPounds(left),
            Bags = bags,
            Cost =
                terms.PricePerBag is { } perBag ? perBag * bags!.Value
                : terms.PricePerTon is { } perTon ? perTon * (decimal)(left / ExactUnits.PoundsPerShortTon)
                : null,
            Magnesium = terms.Material.MagnesiumIn(Mass.FromPounds(left)),
            Dressings = dressings,
            Findings = Finding.InOrder(findings),
            SourceIds =
            [
                .. new[] { terms.Rate.Basis.SourceId, terms.Rate.Basis.Figure?.Index.SourceId, rule?.SourceId }
                    .OfType<string>()
                    .Distinct(),
            ],
        };
    }

    private static bool IsDust(double difference, double whole) => Math.Abs(difference) <= Tolerance.Dust * Math.Max(1, whole);

    private void CheckBuying()
    {
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
            FindingCatalog.Create("lime-depth-changed", ("from", Amounts.Print(from, 2)), ("to", Amounts.Print(inches, 2)))
        );
        return rate.AtDepth(Length.FromInches(inches));
    }

    private ImmutableArray<LimeDressing> Split(double pounds)
    {
        if (pounds <= 0)
        {
            return [];
        }

        double poundsPerAcre = pounds / acres;
        bool high = poundsPerAcre > LimePlacementRule.HighestAtOnce.PoundsPerAcre;
        if (high)
        {
            findings.Add(FindingCatalog.Create("lime-rate-high", ("rate", LimeText.Tons(poundsPerAcre))));
        }

        var own = terms.MostAtOnce ?? rule?.MostAtOnce;
        var limit = own ?? (high ? LimePlacementRule.HighestAtOnce : null);
        if (limit is not { } most || !Tolerance.IsAbove(poundsPerAcre, most.PoundsPerAcre))
        {
            return [Dressing(1, 0, pounds)];
        }

        int parts = WholePackages.RoundUp(poundsPerAcre / most.PoundsPerAcre);

        bool byRule = terms.MostAtOnce is null && own is not null;
        int count = byRule && rule!.MostDressings is { } fewest ? Math.Min(parts, fewest) : parts;
        double part = (byRule && rule!.SplitsEvenly) || count < parts ? pounds / count : most.PoundsPerAcre * acres;
        int months = terms.MonthsBetween ?? rule?.MonthsBetween ?? DefaultMonthsBetween;
        AddSplitFinding(most, count, months, borrowed: own is null);
        return
        [
            .. Enumerable
                .Range(1, count)
                .Select(number => Dressing(number, months, number < count ? part : pounds - (part * (count - 1)))),
        ];
    }

    private void AddSplitFinding(ApplicationRate most, int count, int months, bool borrowed)
    {
        string mostText = LimeText.Tons(most.PoundsPerAcre);
        string whose =
            terms.MostAtOnce is not null ? "the most this order allows at once"
            : borrowed
                ? $"the most Pennsylvania puts on at once, borrowed because {terms.Rate.Institution} prints no limit for lime "
                    + "put on this way"
            : $"the most {terms.Rate.Institution} puts on at once";
        string by = terms.MonthsBetween is null && rule?.MonthsBetween is null ? " by common practice" : "";
        findings.Add(
            months == 0
                ? FindingCatalog.Create(
                    "lime-split-plowed",
                    ("most", mostText),
                    ("whose", whose),
                    ("count", Amounts.Print(count, 0))
                )
                : FindingCatalog.Create(
                    "lime-split",
                    ("most", mostText),
                    ("whose", whose),
                    ("count", Amounts.Print(count, 0)),
                    ("months", Amounts.Print(months, 0)),
                    ("by", by)
                )
        );
    }

    private LimeDressing Dressing(int number, int months, double pounds)
    {
        double? bagPounds = terms.Bag?.Pounds;
        return new LimeDressing
        {
            Number = number,
            MonthsAfterFirst = (number - 1) * months,
            On = terms.FirstDressingOn?.AddMonths((number - 1) * months),
            Rate = ApplicationRate.FromPoundsPerAcre(pounds / acres),
            Mass = Mass.FromPounds(pounds),
            Bags = bagPounds is { } bag ? WholePackages.RoundUp(pounds / bag) : null,
        };
    }

    private void AddFindings(ApplicationRate rate, double left)
    {
        var material = terms.Material;
        var figure = terms.Rate.Basis.Figure;
        if (figure is null)
        {
            findings.Add(FindingCatalog.Create("lime-basis-unstated"));
        }
        else if (figure.Index == LimeIndex.CalciumCarbonateEquivalent)
        {
            findings.Add(FindingCatalog.Create("lime-fineness-not-counted", ("basis", terms.Rate.Basis.Name)));
        }
        else if (figure.Index.Status == DataStatus.Memory && !material.StatedFigures.Any(f => f.Index == figure.Index))
        {
            findings.Add(MemoryGate.FindingFor(figure.Index.Name, figure.Index.SourceId));
        }

        if (terms.Placement == LimePlacement.Surface && left > 0)
        {
            findings.Add(FindingCatalog.Create("lime-surface-slow"));
            if (rule is null)
            {
                findings.Add(FindingCatalog.Create("lime-no-surface-rule", ("institution", terms.Rate.Institution)));
            }
        }

        foreach (var application in terms.AlreadyApplied.Where(a => !a.Material.Neutralizes))
        {
            findings.Add(FindingCatalog.Create("lime-no-neutralizing-value", ("material", application.Material.Name)));
        }

        if (terms.WithUreaOrAmmonium)
        {
            findings.Add(FindingCatalog.Create("lime-with-nitrogen"));
        }

        findings.AddRange(LimeCautions.OfMagnesium(terms.Report, material));
        findings.AddRange(LimeCautions.Of(material, rate));
    }
}
