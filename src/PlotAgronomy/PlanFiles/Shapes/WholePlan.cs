using System.Globalization;
using PlotAgronomy.Nutrients;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>The plan file, version 1. Each part of it is a class of this folder.</summary>
internal sealed class WholePlan : PlanShape<PlotPlan>
{
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
        Method = Required("method", Hyphened<PlantingMethod>(), "How the seed is planted.", p => p.Method);
        Plot = Required("plot", PlotShape.Shape, "The plot.", p => p.Plot);
        var report = Required("soilReport", SoilReportShape.Shape, "The laboratory's report.", p => p);

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
        var targetPh = systems.Optional("targetPh", Number(5, 7.5), InPlace, p => p.StatedTargetPh);

        var growing = Required("growing", GrowingShape.Shape, "What is to be grown.", p => p);

        var materials = new PlanGroup<PlotPlan>("materials", "What is on offer.");
        Materials = Required("materials", materials, "What is on offer.", p => p);
        var limes = materials.Optional("lime", List(new LimeMaterialShape()), "Liming materials.", p => p.LimeOffers);
        var fertilizers = materials.Optional("fertilizers", List(new FertilizerShape()), "Fertilizers.", p => p.FertilizerOffers);
        SeedLots = materials.Required("seedLots", List(new SeedLotShape(), fewest: 1), "Seed lots.", p => GrowingShape.Lots(p));
        const string Ready = "Ready blends of a store, to be held against plain seed.";
        var blends = materials.Optional("storeBlends", List(new StoreBlendShape()), Ready, p => p.StoreBlends);

        var spreader = Required("spreader", new SpreaderShape(), "The spreader.", p => p.Spreader);

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

            if (at.Problems.Count > 0)
            {
                throw PlanPart.Unread();
            }

            var (reported, offered, named) = (at.Part(report)!, at.Get(Materials), at.Get(methods));
            var plan = new PlotPlan
            {
                Currency = at.Get(currency),
                PlantingDate = at.Get(planting),
                LimeDate = at.Maybe(limed),
                TillageDepth = at.Maybe(tillage),
                Method = at.Get(Method),
                Plot = at.Get(Plot),
                Report = at.Get(report),
                Printed = reported.Find(SoilReportShape.Shape.Advice),
                EarlierLime = reported.Find(SoilReportShape.Shape.EarlierLime),
                LimeMethod = named.Get(lime),
                NutrientSystem = named.Get(nutrients),
                LegumeCredit = named.Find(credit),
                StatedTargetPh = named.Maybe(targetPh),
                Kinds = at.Get(growing),
                LimeOffers = offered.All(limes),
                FertilizerOffers = offered.All(fertilizers),
                SeedOffers = offered.All(SeedLots),
                StoreBlends = offered.All(blends),
                Spreader = at.Get(spreader),
            };
            return reported.Find(SoilReportShape.Shape.Facts)?.Invoke(plan) ?? plan;
        });
    }

    internal static WholePlan Shape { get; } = new();

    internal PlanField<PlantingMethod> Method { get; }

    internal PlanField<Plot> Plot { get; }

    internal PlanField<PlanPart> Materials { get; }

    internal PlanField<System.Collections.Immutable.ImmutableArray<Offer<SeedLot>>> SeedLots { get; }
}
