using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>One kind with its lot, its part of the blend and the bulk seed to weigh out.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SownKind
{
    private readonly PlotPlan plan;
    private readonly Area sown;
    private readonly ImmutableArray<SownLot> lots;

    /// <param name="plan">Plan.</param>
    /// <param name="sown">Ground that is sown: the plot, and what its passes cover beside it.</param>
    /// <param name="lots">What each lot gives, the planned one first.</param>
    internal SownKind(PlotPlan plan, Area sown, ImmutableArray<SownLot> lots)
    {
        this.plan = plan;
        this.sown = sown;
        this.lots = lots;
    }

    /// <summary>The ground it is weighed for: the plot, and what the passes cover beside it.</summary>
    internal Area Ground => sown;

    /// <summary>Gets the kind and its lot as planned.</summary>
    public required PlannedKind Planned { get; init; }

    /// <summary>Gets its part of the blend.</summary>
    public required BlendPart Part { get; init; }

    /// <summary>Gets the bulk rate at which the planned lot alone brings its living seed.</summary>
    public required BulkSeeding Bulk { get; init; }

    /// <summary>Gets the bulk seed to weigh out for the plot, of all its lots, each by its own strength.</summary>
    /// <value>Seed that no lot has is counted as seed of the planned one.</value>
    public BulkSeedMass Weight => BulkSeedMass.FromPounds(PoundsOfPlannedLot + FromOthers.Sum(l => l.Weight.Pounds));

    /// <summary>Gets the bulk rate of all its lots together: the weight over the ground that is sown.</summary>
    public BulkSeedRate Rate =>
        FromOthers.IsEmpty
            ? Bulk.Bulk
            : BulkSeedRate.FromRate(ApplicationRate.FromMassAndArea(Weight.ToMass(), sown), Bulk.Bulk.Method);

    /// <summary>Gets the whole packages to buy of the planned lot.</summary>
    public int? Packages => lots[0].Packages;

    /// <summary>Gets the lots that give the rest where there is too little of the planned one; none where that is
    /// enough.</summary>
    public ImmutableArray<SownLot> FromOthers => lots[1..];

    /// <summary>What the planned lot gives, and what no lot has; nothing where others give all.</summary>
    internal double PoundsOfPlannedLot
    {
        get
        {
            var planned = lots[0];
            double given = planned.Weight.Pounds,
                alone = planned.Alone.Pounds;
            return FromOthers.IsEmpty ? Bulk.Bulk.Over(sown).Pounds : given + (Missing.Value * alone);
        }
    }

    /// <summary>What is weighed out of the planned lot.</summary>
    internal Mass OfPlanned => Mass.FromPounds(PoundsOfPlannedLot);

    /// <summary>Gets the part of the seed that no lot on offer has; zero where there is enough.</summary>
    public Fraction Missing { get; init; }

    /// <summary>Gets the price of the packages, in the plan's currency.</summary>
    public decimal Cost => OfPlannedLot + FromOthers.Sum(l => l.Cost);

    /// <summary>The price of what is taken of the planned lot alone.</summary>
    internal decimal OfPlannedLot =>
        Packages is { } packages ? Planned.Offer.CostOf(packages) : BlendMath.Cost(Planned.Offer.PricePerPound, Weight.Pounds);

    /// <summary>What is to be said of lots of which there is no more, and of seed that comes up otherwise than usual.</summary>
    internal IEnumerable<Finding> OfStock
    {
        get
        {
            if (Planned.OwnEmergence is { } own)
            {
                yield return FindingCatalog.Create(
                    PlanningCodes.OwnEmergence,
                    ("kind", Planned.Kind.ShortName),
                    ("own", Amounts.Print(own, 0)),
                    ("factor", Amounts.Print(Planned.SowingFactor, 2))
                );
            }

            string lot = Planned.Offer.Item.ToString();
            if (!FromOthers.IsEmpty)
            {
                yield return FindingCatalog.Create(
                    PlanningCodes.LotToppedUp,
                    ("lot", lot),
                    ("rest", string.Join(" and ", FromOthers.Select(l => l.ToString())))
                );
            }

            if (Missing > Fraction.Zero)
            {
                yield return FindingCatalog.Create(PlanningCodes.LotShort, ("lot", lot), ("missing", Amounts.Print(Missing, 0)));
            }
        }
    }

    /// <summary>Gets the lots that were on offer, ranked by the price of living seed; not needed where no other was
    /// considered.</summary>
    public Answer<SeedChoice> Lots =>
        Planned.Choice is { } choice ? Answers.Given(choice, () => choice.Findings) : Answers.NoneNeeded<SeedChoice>();

    /// <summary>Gets how long ago the lot was tested, held against the federal limit on its sale; open until the month of test
    /// is known.</summary>
    public Answer<TestAge> Test => SeedParts.Test(plan, Planned.Offer.Item);

    /// <summary>Lays out how the living rate and the weight come about; <see cref="Bulk"/> shows what lies between.</summary>
    /// <returns>The lines, in order.</returns>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        double acres = sown.Acres;
        return
        [
            .. BlendWork.LiveRate(Part),
            .. GroundLine,
            .. FromOthers.IsEmpty ? [] : lots.Select(l => l.Line()),
            BlendWork.Weight(Part.Component, acres, Weight.Pounds),
        ];
    }

    /// <summary>Why more ground is sown than the plot has; nothing where it is not.</summary>
    private ImmutableArray<WorkedLine> GroundLine
    {
        get
        {
            double acres = sown.Acres,
                plot = plan.Plot.Area.Acres;
            return Tolerance.AreEqual(acres, plot)
                ? []
                :
                [
                    SpreadingFormulas
                        .All["spread-ground-covered"]
                        .Line(
                            $"{Amounts.Print(acres, 4)} ac",
                            ("plot", $"{Amounts.Print(plot, 4)} ac"),
                            ("part beside it", Amounts.Print((acres / plot) - 1, 4))
                        ),
                ];
        }
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Planned.Kind.ShortName}: {Amounts.Print(Weight.ToMass(), "lb", 2)}";
}
