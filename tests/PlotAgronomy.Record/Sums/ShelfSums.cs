using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using UnitsNet;
using static PlotAgronomy.Record.Sums.FertilizersSums;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>What to buy from a shelf, the fit of single products and their amounts rounded to packages.</summary>
internal static class ShelfSums
{
    private static readonly (string Name, PlotNeed Need)[] Needs =
    [
        ("60-40-80", Need(60, 40, 80)),
        ("60-40-80 with at most 62 of nitrogen", Need(60, 40, 80, 62)),
        ("0-50-50", Need(0, 50, 50)),
        ("120-0-0", Need(120, 0, 0)),
        ("nothing", Need(0, 0, 0)),
        ("sulfur and boron", PlotNeed.Stated(Target(PlantNutrient.Sulfur, 20), Target(PlantNutrient.Boron, 1, 2))),
    ];

    private static Offer<FertilizerProduct>[] Products =>
    [
        Bag("46-0-0", 24), Bag("18-46-0", 36), Bag("0-0-60", 26), Bag("0-46-0", 45),
        Bag("13-13-13", 19), Bag("21-0-0-24S", 17, 40), Bag("0-0-0-14.8B", 40, 25),
    ];

    private static readonly (string Name, FieldConditions Field)[] Fields =
    [
        ("nothing said", FieldConditions.Unknown),
        ("worked in", new() { IsIncorporated = true, IsNearWater = false, HasSoilTest = false }),
        ("warm ground of high pH", new() { IsIncorporated = false, SoilTemperature = Fahrenheit(78), Soil = new SoilReport { Laboratory = "a laboratory", WaterPh = WaterPh.FromValue(7.6) } }),
        ("water near", new() { IsNearWater = true }),
        ("a legume stand", new() { IsLegumeStand = true }),
        ("at the seed", new() { TouchesSeed = true, TouchesInoculatedSeed = true, SeedRowLimit = SeedPlacedLimit.All[0] }),
    ];

    internal static void Record(Recorder recorder)
    {
        Plans(recorder);
        Amounts(recorder);
    }

    private static void Plans(Recorder recorder)
    {
        var shelf = FertilizerShelf.FromOffers(Products);
        foreach (var (words, need) in Needs)
        {
            foreach (var form in Enum.GetValues<PurchaseForm>())
            {
                string name = $"fertilizer shelf: {words}, {Words(form)}";
                recorder.Call($"{name}, cheapest", () => shelf.Cheapest(need, Acres(0.62), form));
                recorder.Call($"{name}, next cheapest", () => shelf.NextCheapest(need, Acres(0.62), form));
                recorder.Call($"{name}, fewest products", () => shelf.FewestProducts(need, Acres(0.62), form));
            }

            foreach (var (field, conditions) in Fields)
            {
                recorder.Call($"fertilizer shelf: {words}, {field}: cautions", () =>
                    shelf.Cheapest(need, Acres(0.62), field: conditions).Findings);
            }

            recorder.Call($"fertilizer shelf: {words}: fit of single products", () => ProductFit.Rank(need, [.. Products.Select(o => o.Item)]));
        }

        recorder.Call("fertilizer shelf: needs and caps that cannot both hold", () =>
            FertilizerShelf.FromOffers(Bag("13-13-13", 19)).Cheapest(Need(60, 40, 80, 62), Acres(1)));
        recorder.Call("fertilizer shelf: lines and balances asked for", () =>
        {
            var plan = shelf.Cheapest(Needs[0].Need, Acres(0.62));
            return Named(
                ("urea", plan.Line("46-0-0")?.Packages),
                ("potash", plan.Balance(PlantNutrient.Potash)?.Delivered),
                ("not there", plan.Line("none")));
        });
        recorder.Call("fertilizer shelf: a search that stops early", () =>
            shelf.Cheapest(Needs[0].Need, Acres(0.62), searchLimit: 3));
        recorder.Call("fertilizer shelf: how far it searches", () => FertilizerShelf.DefaultSearchLimit);
    }

    private static void Amounts(Recorder recorder)
    {
        var need = Needs[1].Need;
        recorder.Call("fertilizer: default rounding", () => RoundingTolerance.Default);
        foreach (var product in Products)
        {
            string name = $"fertilizer {product.Item.Name}: rounded";
            recorder.Call($"{name} to bags", () => RoundedAmounts.For(product, PerAcre(215), need, Acres(0.62)));
            recorder.Call($"{name} to bags, a strict rounding", () =>
                RoundedAmounts.For(product, PerAcre(215), need, Acres(0.62), RoundingTolerance.FromPercent(2, 2, 5)).Findings);
            foreach (double packages in new[] { 0, 1, 2.5, 4 })
            {
                recorder.Call($"{name}, {packages} bags", () => RoundedAmount.ForPackages(product, packages, need, Acres(0.62)));
            }

            recorder.Call($"{name}, percent of need", () =>
                Enum.GetValues<PlantNutrient>().Select(RoundedAmount.ForPackages(product, 2, need, Acres(0.62)).PercentOfNeed));
            recorder.Call($"{name}, cautions by field", () =>
                Fields.ToDictionary(f => f.Name, f => RoundedAmount.ForPackages(product, 2, need, Acres(0.62)).Judge(f.Field)));
        }
    }
}
