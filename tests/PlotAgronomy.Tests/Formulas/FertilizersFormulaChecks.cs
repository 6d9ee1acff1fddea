using PlotAgronomy.Fertilizers;
using UnitsNet;

namespace PlotAgronomy.Tests.Formulas;

internal static class FertilizersFormulaChecks
{
    internal static FormulaCheck[] All =>
        [
            new(
                "product-for-nutrient",
                d => FertilizerMath.ProductFor(d["need"], d["percent"]),
                ("need", 0, 200),
                ("percent", 1, 62)
            ),
            new(
                "product-rate-by-policy",
                d => FertilizerMath.ProductFor(d["limit"], d["percent"]),
                ("limit", 0, 200),
                ("percent", 1, 62)
            ),
            new(
                "nutrient-in-product",
                d => FertilizerMath.NutrientIn(d["rate"], d["percent"]),
                ("rate", 0, 600),
                ("percent", 0, 62)
            ),
            new("product-weight", Weight, ("rate", 0, 600), ("area", 0.05, 10)),
            new("nutrient-wanted", Weight, ("rate", 0, 200), ("area", 0.05, 10)),
            new(
                "price-of-packages",
                d => (double)FertilizerMath.Price((decimal)d["packages"], (decimal)d["price"]),
                ("packages", 0, 40),
                ("price", 5, 80)
            ),
            new(
                "nutrient-spread",
                d =>
                    ApplicationRate
                        .FromMassAndArea(Mass.FromPounds(d["weight x analysis"]), Area.FromAcres(d["area"]))
                        .PoundsPerAcre,
                ("weight x analysis", 0, 200),
                ("area", 0.05, 10)
            ),
            new(
                "manure-rate",
                d => FertilizerMath.TonsFor(d["need"], d["available in a ton"]),
                ("need", 0, 200),
                ("available in a ton", 5, 80)
            ),
            new(
                "manure-phosphate-available",
                d => FertilizerMath.Available(d["total phosphate"], d["part that counts"]),
                ("total phosphate", 1, 100),
                ("part that counts", 0.1, 1)
            ),
            new(
                "manure-nitrogen-available",
                d => FertilizerMath.Available(d["total nitrogen"], d["part available"]),
                ("total nitrogen", 5, 80),
                ("part available", 0.1, 1)
            ),
            new(
                "filler",
                d => FertilizerMath.Filler(d["batch"], d["materials"]),
                ("batch", 1000, 2000),
                ("materials", 100, 1500)
            ),
            new(
                "material-in-a-ton",
                d => FertilizerMath.PoundsPerTon(d["weight"], d["batch"]),
                ("weight", 1, 1000),
                ("batch", 50, 4000)
            ),
            new(
                "grade-of-mixture",
                d => FertilizerMath.PercentOf(d["nutrient"], d["weight"]),
                ("nutrient", 0, 900),
                ("weight", 1000, 2000)
            ),
            new(
                "nutrient-of-product",
                d => FertilizerMath.NutrientIn(d["weight"], d["percent"]),
                ("weight", 1, 500),
                ("percent", 1, 60)
            ),
            new(
                "liquid-content",
                d => FertilizerMath.NutrientIn(d["pounds a gallon"], d["percent"]),
                ("pounds a gallon", 8, 12),
                ("percent", 1, 35)
            ),
            new(
                "label-index",
                d => FertilizerMath.OverallIndex(d["worth found"], d["worth guaranteed"]),
                ("worth found", 5, 30),
                ("worth guaranteed", 5, 30)
            ),
        ];

    private static double Weight(Draw d) => ApplicationRate.FromPoundsPerAcre(d["rate"]).Over(Area.FromAcres(d["area"])).Pounds;
}
