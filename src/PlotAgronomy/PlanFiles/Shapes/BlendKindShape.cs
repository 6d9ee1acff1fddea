using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>One kind to be grown; which lot of it is bought, the shelf says, unless a lot is named.</summary>
internal sealed class BlendKindShape : PlanShape<PlannedKind, BlendKindShape.KindOfPlan>
{
    internal const double MostShare = 2;

    private const string RateFor =
        "Sowing method the rate is written for; left out, that of the plan's `method`. broadcast: spread on worked ground. "
        + "broadcast-under-cover: into a standing crop.";

    private readonly RestOfPlan rest;
    private readonly PlanField<CropKind> kind;
    private readonly PlanField<CropYield> yield;

    internal BlendKindShape(RestOfPlan rest)
        : base("blendKind", "One kind to be grown.")
    {
        this.rest = rest;
        const string AnyName =
            "Kind by common, scientific or market-class name; where a name fits several kinds, as oats, white clover and "
            + "radish do, `check` lists them.";
        kind = Required("kind", Kind("crimson clover"), AnyName, k => k.Planned.Kind);
        Share = Optional(
            "shareOfFullStand",
            Number(0, MostShare),
            "Rate divided by the kind's full rate alone for the same method.",
            k => k.AsRate ? null : k.Planned.Share.ShareOfFullStand,
            PlanNeed.OneOf
        );
        var above0 = new PlanSeedRate(kind, "12 lb/ac");
        var rate = Optional(
            "rate",
            above0,
            "Seeding rate; `rateIs` says of what.",
            k => k.AsRate ? k.LivingRate : null,
            PlanNeed.OneOf
        );
        var rateIs = Optional(
            "rateIs",
            new PlanChoice<bool>([("pure live seed", true), ("bulk", false)]),
            "Beside a rate: whether it counts pure live seed, or bulk seed as it lies in the bag.",
            k => IfSet(k.AsRate)
        );
        var rateFor = Optional("rateFor", Hyphened(SowingMethods.Words), RateFor, k => k.AsRate ? k.Plan.ComparedMethod : null);
        const string OwnFull =
            "Rate for a full stand of the kind alone, as the tag or your guide prints it, in pure live seed for the way the plan "
            + "plants; without it, what publications print.";
        var fullRate = Optional("fullRate", above0, OwnFull, k => k.Planned.OwnFullRate(k.Plan.SowingMethod)?.Rate)
            .Answers(SeedCodes.AskFullRate);
        Unsaid("a full rate for another way of sowing", k =>
            k.Planned.FullRate is not null && k.Planned.OwnFullRate(k.Plan.SowingMethod) is null
        );
        const string Marked = "Mark of the lot to sow; without it, the lot whose living pound costs least.";
        var lot = Optional("lot", Text("A-1"), Marked, k => k.IsChosen ? null : k.Planned.Offer.Item.Label);
        const string CarriedOff = "Yield of a kind that is cut and carried off; never assumed.";
        yield = Optional("yield", Yield(), CarriedOff, k => k.Planned.Yield).Answers(NutrientCodes.AskYield);
        const string CountedHere = "Part of the living seed that comes up on this plot, by your own counts; it changes the rate.";
        var emergence = Optional("ownEmergence", Percent("40 %"), CountedHere, k => k.Planned.OwnEmergence);

        ReadAs(at =>
        {
            SowingMethod? planted = at.Plan.Maybe(rest.Method) is { } plants ? PlotPlan.SowingMethodOf(plants) : null;
            var lacking = new PlanField[] { rateIs, rateFor }
                .Where(l => at.Has(rate) && !at.Has(l) && !(l == rateFor && planted is not null))
                .ToList();
            if (lacking.Count > 0)
            {
                at.ReportMissing(rate, $"a rate needs {string.Join(" and ", lacking.Select(l => $"'{l.Name}'"))}");
            }

            var grown = at.Get(kind);
            PureLiveSeedRate? own = null;
            if (at.Has(fullRate))
            {
                own = planted is { } way
                    ? PureLiveSeedRate.FromRate(at.Get(fullRate), way)
                    : throw at.Report(
                        fullRate,
                        "a full rate needs the plan's 'method', for it is another for each way of sowing"
                    );
            }
            else if (planted is { } way)
            {
                at.Try(kind, () => grown.FullRange(way));
            }

            var (offer, choice) = OfferOf(grown, at, kind, lot);
            if (rest.IsCarriedOff(at.Plan) && !at.Has(yield))
            {
                at.Report(kind, $"a crop that is cut and carried off needs the yield of {grown.CommonName}");
            }

            SowingMethod WrittenFor() => planted is { } method && !at.Has(rateFor) ? method : at.Get(rateFor);
            PureLiveSeedRate Living() =>
                at.Get(rateIs)
                    ? PureLiveSeedRate.FromRate(at.Get(rate), WrittenFor())
                    : PureLiveSeed.Delivered(
                        BulkSeedRate.FromRate(at.Get(rate), WrittenFor()),
                        offer.Item.Analysis,
                        ViabilityRule.For(grown)
                    );
            KindShare ShareOf(PureLiveSeedRate sown) =>
                own is { } full && full.Method == sown.Method
                    ? KindShare.FromShare(grown, sown / full)
                    : KindShare.FromRate(grown, sown);
            if (at.Maybe(Share) is 0)
            {
                at.Report(Share, "must be above zero; leave a kind that is not sown out");
            }

            return new()
            {
                Share = at.Has(Share)
                    ? at.Try(Share, () => KindShare.FromShare(grown, at.Get(Share)))
                    : at.Try(rate, () => ShareOf(Living())),
                FullRate = own,
                Choice = choice,
                Offer = offer,
                Yield = at.Maybe(yield),
                OwnEmergence = at.Maybe(emergence) is { } came
                    ? at.Try(emergence, () =>
                        Fraction.FromValue(
                            Guard.AboveUpTo(came.Value, 0, 1, "of the living seed", nameof(PlannedKind.OwnEmergence))
                        )
                    )
                    : null,
            };
        });
    }

    internal PlanField<double> Share { get; }

    internal void CheckYield(PlanPart part, RecommendationSystem system)
    {
        if (part.Find(kind) is not { } grown || part.Maybe(yield) is not { } given)
        {
            return;
        }

        var proxy = KindProxy.For(grown);
        foreach (var nutrient in (PlantNutrient[])[PlantNutrient.Phosphate, PlantNutrient.Potash])
        {
            if (proxy.RowIn(system, nutrient) is { } row && CropRows.UnitOf(row) != given.Unit)
            {
                string unit = NutrientWords.InFull(CropRows.UnitOf(row));
                part.Report(yield, $"{system.Name} counts the yield of {CropRows.WordsFor(row)} in {unit}, found {given}");
            }
        }
    }

    private static PlanShape<CropYield> Yield()
    {
        var shape = new PlanShape<CropYield>("yield", "What is expected to be carried off an acre.");
        var value = shape.Required("value", NumberTo<double>("yield-high"), "Yield.", y => y.PerAcre);
        var unit = shape.Required("unit", Choice(NutrientWords.YieldsPerAcre), "Unit.", y => y.Unit);
        shape.ReadAs(at =>
            at.Get(unit) == YieldUnit.Ton ? CropYield.FromTonsPerAcre(at.Get(value)) : CropYield.FromBushelsPerAcre(at.Get(value))
        );
        return shape;
    }

    /// <summary>The lot that is named, else the cheapest; the lots of the kind when it was chosen among them.</summary>
    private (Offer<SeedLot> Offer, SeedChoice? Choice) OfferOf(
        CropKind kind,
        PlanPart at,
        PlanField<CropKind> ofKind,
        PlanField<string> lot
    )
    {
        var offers = rest.SeedLots(at.Plan);
        bool everyLotWasRead = rest.EverySeedLotWasRead(at.Plan);
        if (at.Find(lot) is { } mark)
        {
            var ofTheKind = offers.Where(o => o.Item.Kind.Id == kind.Id).ToList();
            var marked = ofTheKind.Where(o => o.Item.Label == mark).ToList();
            string marks = string.Join(", ", ofTheKind.Select(o => o.Item.Label));
            return marked.Count == 1 ? (marked[0], null)
                : everyLotWasRead
                    ? throw at.Report(lot, $"expected the mark of one lot of {kind.CommonName} ({marks}), found '{mark}'")
                : throw PlanPart.Unread();
        }

        var choice = SeedShelf.FromOffers(offers).Cheapest(kind);
        return choice.Offer is { } offer ? (offer, choice)
            : everyLotWasRead ? throw at.Report(ofKind, $"no seed lot of {kind.CommonName} is on offer")
            : throw PlanPart.Unread();
    }

    /// <param name="Planned">The kind.</param>
    /// <param name="Plan">The plan that it stands in.</param>
    /// <param name="AsRate">Whether it is written as a rate in place of a share.</param>
    internal sealed record KindOfPlan(PlannedKind Planned, PlotPlan Plan, bool AsRate)
    {
        /// <summary>Whether the lot reads back without its mark: chosen as the cheapest, or with a mark that others
        /// have.</summary>
        internal bool IsChosen =>
            SeedShelf.FromOffers(SeedLotShape.AllOf(Plan)).Cheapest(Planned.Kind).Offer == Planned.Offer
            && (Planned.Choice is not null || !IsMarked);

        private bool IsMarked =>
            SeedLotShape.AllOf(Plan).Count(o => o.Item.Kind.Id == Planned.Kind.Id && o.Item.Label == Planned.Offer.Item.Label)
            == 1;

        /// <summary>The rate whose share reads back as this one.</summary>
        internal ApplicationRate LivingRate
        {
            get
            {
                double share = Planned.Share.ShareOfFullStand;
                var own = Planned.OwnFullRate(Plan.ComparedMethod) ?? Planned.Kind.FullRange(Plan.ComparedMethod).Full;
                double full = own.PoundsPerAcre;
                double[] near = [share * full, Math.BitIncrement(share * full), Math.BitDecrement(share * full)];
                return ApplicationRate.FromPoundsPerAcre(near[Math.Max(0, Array.FindIndex(near, r => r / full == share))]);
            }
        }
    }
}
