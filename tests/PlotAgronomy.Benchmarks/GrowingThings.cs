using System.Text.Json.Nodes;
using PlotAgronomy.Blends;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Land;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;
using PlotAgronomy.Sheets;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Benchmarks;

/// <summary>A thing whose size a person sets, the sizes to try, and what is timed of one of a size.</summary>
internal sealed record GrowingThing(string Name, int[] Sizes, Func<int, Action> Make);

/// <summary>The things whose cost depends on how much a person hands in.</summary>
internal static class GrowingThings
{
    /// <summary>Facts that a plan is asked for when it lacks them.</summary>
    private static readonly string[] Facts =
    [
        "plot.texture", "plot.drainage", "plot.standsNow", "soilReport.depth", "soilReport.sampled", "limeDate", "tillageDepth",
        "soilReport.humicMatter", "soilReport.weightPerVolume", "soilReport.cec", "plantingDate", "soilReport.exchangeableAcidity",
    ];

    private static readonly string Demo = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "fall-blend.json"));
    private static readonly PlotPlan Plan = Read(Demo);

    internal static readonly GrowingThing[] All =
    [
        new("words in a line of a tag", [25, 50, 100, 200], TagLine),
        new("lines of a tag", [15, 30, 60, 120], TagLines),
        new("corners of a plot, passes laid", [1_000, 2_000, 4_000, 8_000], Corners),
        new("products, cheapest whole bags", [10, 20, 40, 80, 160], Shelf),
        new("lots, recipe", [5, 10, 20, 40], Recipe),
        new("kinds of a blend, whole sheet", [6, 12, 25, 50], Kinds),
        new("plots of a property", [6, 12, 25, 50], Plots),
        new("facts left out, whole sheet", [1, 3, 6, 12], LeftOut),
    ];

    private static Action TagLine(int words)
    {
        string line = $"{string.Join(' ', Enumerable.Range(0, words).Select(i => $"word{i}"))} 98 % 85 %";
        return () => SeedTag.Read(line);
    }

    private static Action TagLines(int lines)
    {
        string tag = string.Join('\n', Enumerable.Range(0, lines).Select(i => $"a line that names nothing {i}"));
        return () => SeedTag.Read(tag);
    }

    /// <summary>A round plot whose edge waves, so that many strips are cut.</summary>
    private static Action Corners(int corners)
    {
        var outline = PlotOutline.FromCorners([.. Enumerable.Range(0, corners)
            .Select(i => (Angle: 2 * Math.PI * i / corners, Feet: 300 + (5 * Math.Sin(40 * Math.PI * i / corners))))
            .Select(c => PlanePoint.FromFeet(c.Feet * Math.Cos(c.Angle), c.Feet * Math.Sin(c.Angle)))]);
        var request = new FieldPassesRequest
        {
            Rate = ApplicationRate.FromPoundsPerAcre(10),
            Swath = Length.FromFeet(12),
            Speed = Speed.FromMilesPerHour(3),
        };
        return () => FieldPasses.Lay(outline, request);
    }

    private static Action Shelf(int products)
    {
        var random = new Random(products);
        var shelf = FertilizerShelf.FromOffers([.. Enumerable.Range(0, products).Select(i =>
        {
            int[] grade = [random.Next(0, 33), random.Next(0, 33), random.Next(1, 33)];
            string analysis = $"{grade[0]}-{grade[1]}-{grade[2]}";
            var product = FertilizerProduct.Create($"{analysis} no {i}", FertilizerAnalysis.FromGrade(analysis));
            return Offer.InBags(product, Mass.FromPounds(50), random.Next(1_000, 5_000) / 100m);
        })]);
        var need = PlotNeed.Stated(Target(PlantNutrient.Nitrogen, 46), Target(PlantNutrient.Phosphate, 63), Target(PlantNutrient.Potash, 71));
        return () => shelf.Cheapest(need, Area.FromAcres(1.2), PurchaseForm.BuyWholePackages);
    }

    private static NutrientTarget Target(PlantNutrient nutrient, double pounds) =>
        NutrientTarget.Create(nutrient, ApplicationRate.FromPoundsPerAcre(pounds), null, "benchmark");

    private static Action Recipe(int lots)
    {
        Offer<SeedLot>[] offers = [.. Sown(lots).Select(k => k.Offer)];
        var request = new RecipeRequest
        {
            Area = Area.FromAcres(0.5),
            Method = SowingMethod.Broadcast,
            Seasons = [SeasonOfUse.EarlyFall, SeasonOfUse.Spring],
        };
        return () => RecipeProposal.Find(request, offers);
    }

    private static Action Kinds(int kinds)
    {
        var plan = Plan with { Kinds = [.. Sown(kinds)] };
        return () => FieldSheet.Of(plan.Solve()).ToText();
    }

    private static Action Plots(int plots)
    {
        PlotPlan[] plans = [.. Enumerable.Range(0, plots).Select(i => Plan with { Plot = Plan.Plot with { Name = $"plot {i}" } })];
        return () => FieldSheet.Of(PropertyPlan.Of(plans)).ToText();
    }

    private static Action LeftOut(int facts)
    {
        var root = JsonNode.Parse(Demo)!.AsObject();
        foreach (string fact in Facts.Take(facts))
        {
            string[] steps = fact.Split('.');
            var owner = steps.SkipLast(1).Aggregate(root, (node, step) => node[step]!.AsObject());
            owner.Remove(steps[^1]);
        }

        var plan = Read(root.ToJsonString());
        return () => FieldSheet.Of(plan.Solve()).ToText();
    }

    /// <summary>Kinds that may be broadcast, each with a bag of its own, alike in share.</summary>
    private static IEnumerable<PlannedKind> Sown(int kinds) =>
        KindCatalog.Standard.Kinds.Where(k => k.Rates?.For(SowingMethod.Broadcast) is not null).Take(kinds).Select((kind, i) =>
        {
            var tag = SeedAnalysis.FromFractions(Fraction.FromPercent(98), Fraction.FromPercent(85));
            var lot = new SeedLot { Kind = kind, Label = $"lot {i}", Analysis = tag };
            return new PlannedKind { Share = KindShare.FromShare(kind, 1.0 / kinds), Offer = Offer.InBags(lot, Mass.FromPounds(5), 10 + i) };
        });

    private static PlotPlan Read(string json) => PlanFile.Read(json).Plan ?? throw new InvalidDataException("The demo is no plan.");
}
