using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Land;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>The plan file, version 1. Each part of it is a class of this folder.</summary>
internal sealed class WholePlan : PlanShape<PlotPlan>
{
    private readonly PlanField<PlanPart> materials;
    private readonly PlanField<ImmutableArray<Offer<SeedLot>>> seedLots;

    private WholePlan()
        : base("plan", "One plot, one planting.")
    {
        Optional("$schema", Text(), "Address of the schema, for editors.", _ => null);
        Required("planVersion", Number(1, 1), "Version of this format.", _ => 1);
        var money = Text("USD").As(Currency.FromCode, c => c.Code);
        const string OfPrices = "The one currency of all prices (ISO 4217); left out, prices are plain numbers.";
        var currency = Optional("currency", money, OfPrices, p => p.Currency == Currency.Unnamed ? null : p.Currency);
        var planting = Optional("plantingDate", Date, "Day of planting; left out while it is not set.", p => p.PlantingDate)
            .Answers(PlanningCodes.AskDay);
        const string LimeDay = "Day by which the lime is spread; without it the pH on planting day stays open.";
        var limed = Optional("limeDate", By, LimeDay, p => p.LimeDate).Answers(LimingCodes.AskDay);
        const string Worked = "Depth to which the ground is worked and lime mixed in.";
        var tillage = Optional("tillageDepth", Length("5 in"), Worked, p => p.TillageDepth);
        var method = Optional("method", Hyphened<PlantingMethod>(), HowPlanted, p => p.Method)
            .Answers(PlanningCodes.AskMethod, PlanningCodes.AskMethodMeant, SeedCodes.AskRate);
        const string OwnPace =
            "The owner's own pace, or its length such as `2.5 ft`; then lengths may be counted in paces. Never assumed.";
        var pace = Optional("pace", Text<PaceCalibration>("100 ft in 40 paces", PaceText.TryRead, PaceText.Print), OwnPace, p =>
            p.Pace
        );
        Unsaid("paces of another length than the plan's own", HasOtherPaces);
        var plotShape = new PlotShape(pace);
        var plot = Required("plot", plotShape, "The plot.", p => p.Plot);
        var reportShape = new SoilReportShape();
        const string Printed = "What is printed on the laboratory's report, readings or recommendation; left out without one.";
        var report = Optional("soilReport", reportShape, Printed, p => p.Report is null && p.Printed is null ? null : p)
            .Answers(SoilCodes.AskReport);
        var homePh = Optional("homePh", HomePhOfStrip(), "A pH read with a strip or a meter.", p => p.HomePh);

        var systems = new PlanGroup<PlotPlan>(
            "methods",
            "Which published systems to use; a system resting on unchecked numbers answers only when named here."
        );
        const string Chosen =
            "The published systems to use; left out, the laboratory or the place chooses, and the sheet says so.";
        var methods = Optional("methods", systems, Chosen, p => p);
        var limeMethods = Choice(LimeMethod.Everything, m => m.Id);
        var lime = systems.Optional("lime", limeMethods, "Lime requirement method.", p => p.LimeMethod)
            .Answers(LimingCodes.AskMethod, LimingCodes.AskWhose);
        var nutrients = systems.Optional(
            "nutrients",
            Choice(RecommendationSystem.Everything, s => s.Id),
            "Recommendation system for phosphate and potash.",
            p => p.NutrientSystem
        ).Answers(NutrientCodes.AskSystem, NutrientCodes.AskWhose);
        var credit = systems.Optional(
            "legumeCredit",
            Choice(LegumeCredit.Everything, c => c.Id),
            "Published nitrogen credit for the legume that grew or stands there.",
            p => p.LegumeCredit
        );
        const string InPlace = "Target pH in place of the method's or the blend's own.";
        var targetPh = systems.Optional("targetPh", NumberWithin<double>("target-ph"), InPlace, p => p.StatedTargetPh);

        bool IsCarriedOff(PlanPart plan) => plan.Part(plot)?.Find(plotShape.IsCarriedOff) == true;
        var rest = new RestOfPlan(method, IsCarriedOff, SeedLotsOf, EverySeedLotWasRead);
        var growingShape = new GrowingShape(rest);
        const string ToSow = "What is to be sown; without it the stand that is there is kept up.";
        var growing = Optional("growing", growingShape, ToSow, p => p.Kinds.IsEmpty ? null : p);

        var onOffer = new PlanGroup<PlotPlan>("materials", "What is on offer.");
        materials = Optional("materials", onOffer, "What is on offer.", p => p);
        var limes = onOffer.Optional("lime", List(new LimeMaterialShape()), "Liming materials.", p => p.LimeOffers)
            .Answers(LimingCodes.AskOffer);
        var fertilizers = onOffer.Optional("fertilizers", List(new FertilizerShape()), "Fertilizers.", p => p.FertilizerOffers)
            .Answers(FertilizerCodes.AskOffer);
        seedLots = onOffer.Optional("seedLots", List(new SeedLotShape()), "Seed lots.", p => SeedLotShape.AllOf(p))
            .Answers(SeedCodes.AskUntreated, SeedCodes.AskHomeTest);
        const string Ready = "Ready blends of a store, to be held against plain seed.";
        var blends = onOffer.Optional("storeBlends", List(new StoreBlendShape(method)), Ready, p => p.StoreBlends);

        var season = Optional("season", new SeasonShape(), "What is known of place, frost and weeds.", p => p.Season);

        var spreaderShape = new SpreaderShape(pace);
        var spreader = Optional("spreader", spreaderShape, "The spreader.", p => p.Spreader);

        ReadAs(at =>
        {
            double tooDeep = PlotPlan.MostTillageInches;
            if (at.Maybe(tillage) is { } depth && depth.Inches >= tooDeep - 1e-6)
            {
                string found = Amounts.Print(depth, "in", 2);
                at.Report(
                    tillage,
                    string.Create(CultureInfo.InvariantCulture, $"expected less than {tooDeep} in, found {found}")
                );
            }

            if (at.Part(methods)?.Find(nutrients) is { } system && at.Part(growing) is { } toGrow)
            {
                growingShape.CheckYields(toGrow, system);
            }

            if (at.Part(plot) is { } ground && at.Part(spreader)?.Maybe(spreaderShape.Swath) is { } swath)
            {
                plotShape.CheckStrips(ground, at.Find(plot), swath);
            }

            if (at.Find(plot) is { } sown)
            {
                var counts = new PackageCounts(sown.Area);
                if (at.Part(materials) is { } goods)
                {
                    counts.Check(goods, limes, PackageCounts.MostOf);
                    counts.Check(goods, fertilizers, PackageCounts.MostOf);
                    counts.Check(goods, seedLots, PackageCounts.MostOf);
                }

                if (at.Part(spreader) is { } walked)
                {
                    counts.Check(walked, spreaderShape.Hopper);
                }
            }

            if (at.Problems.Count > 0)
            {
                at.ReportDoubts(PlanSense.Of(at.Find(plot), at.Find(report), at.Maybe(planting)));
                throw PlanPart.Unread();
            }

            var (reported, offered, named) = (at.Part(report), at.Find(materials), at.Find(methods));
            var plan = new PlotPlan
            {
                Currency = at.Find(currency) ?? Currency.Unnamed,
                PlantingDate = at.Maybe(planting),
                LimeDate = at.Maybe(limed),
                TillageDepth = at.Maybe(tillage),
                Method = at.Maybe(method),
                Pace = at.Find(pace),
                Plot = at.Get(plot),
                Report = at.Find(report),
                HomePh = at.Find(homePh),
                Printed = reported?.Find(reportShape.Advice),
                EarlierLime = reported?.Find(reportShape.EarlierLime),
                LimeSinceSample = reported?.Maybe(reportShape.LimeSince),
                LimeMethod = named?.Find(lime),
                NutrientSystem = named?.Find(nutrients),
                LegumeCredit = named?.Find(credit),
                StatedTargetPh = named?.Maybe(targetPh),
                Kinds = at.All(growing),
                LimeOffers = offered?.All(limes) ?? [],
                FertilizerOffers = offered?.All(fertilizers) ?? [],
                SeedOffers = offered?.All(seedLots) ?? [],
                StoreBlends = offered?.All(blends) ?? [],
                Spreader = at.Find(spreader),
                Season = at.Find(season) is { SaysNothing: false } known ? known : null,
            };
            return reported?.Find(reportShape.Facts)?.Invoke(plan) ?? plan;
        });
    }

    private static bool HasOtherPaces(PlotPlan plan) =>
        plan.Plot.Measured.Measured.Any(l =>
            l.IsPaced && (l.Walked is not var (steps, _) || plan.Pace?.Measure(StepCount.FromSingleSteps(steps)) != l)
        );

    internal static WholePlan Shape { get; } = new();

    private const string HowPlanted =
        "How the seed is planted. tilled-and-packed: the ground is tilled, firmed, sown by spreader and pressed (broadcast on "
        + "worked ground, then rolled firm, is this one). broadcast-then-rolled: spread into a standing crop that is then rolled "
        + "down over the seed. broadcast-then-mown: spread into standing growth that is then mown over the seed. frost-seeded: "
        + "spread on frozen ground in late winter. drilled: placed by a drill.";

    private static PlanShape<HomePh> HomePhOfStrip()
    {
        var shape = new PlanShape<HomePh>(
            "homePh",
            "A pH read with a strip or a meter; it gives a range of lime, never an order."
        );
        var ph = shape.Required("ph", NumberTo<double>("ph-high"), "pH as read.", p => p.Value);
        var error = shape.Optional(
            "error",
            NumberTo<double>("home-ph-error-high"),
            "How far it may be off; 0.5 when left out.",
            p => p.Error
        );
        shape.ReadAs(at => at.Try(ph, () => HomePh.FromValue(at.Get(ph), at.Maybe(error))));
        return shape;
    }

    private ImmutableArray<Offer<SeedLot>> SeedLotsOf(PlanPart plan) => plan.Find(materials)?.All(seedLots) ?? [];

    private bool EverySeedLotWasRead(PlanPart plan) => plan.Find(materials)?.IsWhole(seedLots) == true;
}
