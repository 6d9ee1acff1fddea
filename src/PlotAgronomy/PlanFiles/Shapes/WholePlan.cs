using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Nutrients;
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
        var currency = Required("currency", money, "The one currency of all prices (ISO 4217).", p => p.Currency);
        var planting = Required("plantingDate", Date, "Day of planting.", p => p.PlantingDate);
        const string LimeDay = "Day the lime is spread; without it the pH on planting day stays open.";
        var limed = Optional("limeDate", Date, LimeDay, p => p.LimeDate);
        const string Worked = "Depth to which the ground is worked and lime mixed in.";
        var tillage = Optional("tillageDepth", Length("5 in"), Worked, p => p.TillageDepth);
        var method = Required("method", Hyphened<PlantingMethod>(), "How the seed is planted.", p => p.Method);
        var plotShape = new PlotShape();
        var plot = Required("plot", plotShape, "The plot.", p => p.Plot);
        var reportShape = new SoilReportShape();
        var report = Required("soilReport", reportShape, "The laboratory's report.", p => p);

        var systems = new PlanGroup<PlotPlan>(
            "methods",
            "Which published systems to use; a system resting on unchecked numbers answers only when named here."
        );
        var methods = Required("methods", systems, "The published systems to use.", p => p);
        var limeMethods = Choice(LimeMethod.Everything, m => m.Id);
        var lime = systems.Required("lime", limeMethods, "Lime requirement method.", p => p.LimeMethod);
        var nutrients = systems.Required(
            "nutrients",
            Choice(RecommendationSystem.Everything, s => s.Id),
            "Recommendation system for phosphate and potash.",
            p => p.NutrientSystem
        );
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
        var growing = Required("growing", growingShape, "What is to be grown.", p => p);

        var onOffer = new PlanGroup<PlotPlan>("materials", "What is on offer.");
        materials = Required("materials", onOffer, "What is on offer.", p => p);
        var limes = onOffer.Optional("lime", List(new LimeMaterialShape()), "Liming materials.", p => p.LimeOffers);
        var fertilizers = onOffer.Optional("fertilizers", List(new FertilizerShape()), "Fertilizers.", p => p.FertilizerOffers);
        seedLots = onOffer.Required("seedLots", List(new SeedLotShape(), fewest: 1), "Seed lots.", p => SeedLotShape.AllOf(p));
        const string Ready = "Ready blends of a store, to be held against plain seed.";
        var blends = onOffer.Optional("storeBlends", List(new StoreBlendShape(method)), Ready, p => p.StoreBlends);

        var spreaderShape = new SpreaderShape();
        var spreader = Required("spreader", spreaderShape, "The spreader.", p => p.Spreader);

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

            if (at.Find(plot) is { } sown && at.Part(materials) is { } goods)
            {
                PackageCounts.Check(goods, limes, sown.Area);
                PackageCounts.Check(goods, fertilizers, sown.Area);
                PackageCounts.Check(goods, seedLots, sown.Area);
            }

            if (at.Problems.Count > 0)
            {
                throw PlanPart.Unread();
            }

            var (reported, offered, named) = (at.Part(report)!, at.Get(materials), at.Get(methods));
            var plan = new PlotPlan
            {
                Currency = at.Get(currency),
                PlantingDate = at.Get(planting),
                LimeDate = at.Maybe(limed),
                TillageDepth = at.Maybe(tillage),
                Method = at.Get(method),
                Plot = at.Get(plot),
                Report = at.Get(report),
                Printed = reported.Find(reportShape.Advice),
                EarlierLime = reported.Find(reportShape.EarlierLime),
                LimeMethod = named.Get(lime),
                NutrientSystem = named.Get(nutrients),
                LegumeCredit = named.Find(credit),
                StatedTargetPh = named.Maybe(targetPh),
                Kinds = at.Get(growing),
                LimeOffers = offered.All(limes),
                FertilizerOffers = offered.All(fertilizers),
                SeedOffers = offered.All(seedLots),
                StoreBlends = offered.All(blends),
                Spreader = at.Get(spreader),
            };
            return reported.Find(reportShape.Facts)?.Invoke(plan) ?? plan;
        });
    }

    internal static WholePlan Shape { get; } = new();

    private ImmutableArray<Offer<SeedLot>> SeedLotsOf(PlanPart plan) => plan.Get(materials).All(seedLots);

    private bool EverySeedLotWasRead(PlanPart plan) => plan.Get(materials).IsWhole(seedLots);
}
