using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>One printed equation of test and yield.</summary>
internal sealed record LinearEquation(
    string SystemId,
    CropRow Crop,
    PlantNutrient Nutrient,
    ImmutableArray<Extractant> Extractants,
    string Formula,
    double Constant,
    double PerYield,
    double PerTest,
    double PerBoth,
    double? PrintedLimit,
    double LeastRate,
    Origin Origin
)
{
    internal bool AsksForYield => PerYield != 0 || PerBoth != 0;

    /// <summary>Test above which nothing is advised: the printed limit, else where the line reaches zero for every
    /// yield.</summary>
    internal double ZeroAbove => PrintedLimit ?? -PerYield / PerBoth;

    internal static LinearEquation FromRow(CsvRow r) =>
        new(
            r.Text("system_id"),
            r.Choice<CropRow>("crop"),
            r.Choice<PlantNutrient>("nutrient"),
            r.Choices<Extractant>("extractants"),
            r.Text("formula"),
            r.Number("constant"),
            r.Number("per_yield"),
            r.Number("per_test"),
            r.Number("per_yield_and_test"),
            r.NumberOrNull("zero_above_test"),
            r.NumberOrNull("least_rate_lb_per_ac") ?? 0,
            r.Origin()
        );

    internal LinearNeedKernel Kernel(double yield) =>
        new()
        {
            Constant = Constant,
            PerYield = PerYield,
            PerTest = PerTest,
            PerBoth = PerBoth,
            LeastRate = LeastRate,
            ZeroAbove = ZeroAbove,
            Yield = yield,
        };

    /// <summary>What the line gives before the least rate.</summary>
    internal double Unlimited(double yield, double test) => SystemMath.Linear(Constant, PerYield, PerTest, PerBoth, yield, test);

    /// <summary>The equation as printed: what falls with the test stands behind a minus.</summary>
    internal WorkedLine Line(string nutrient, double yield, double test, double rate) =>
        NutrientFormulas
            .All[Formula]
            .Line(
                NutrientFormulas.PerAcre(rate),
                ("nutrient", nutrient),
                ("least rate", NutrientFormulas.Number(LeastRate)),
                ("constant", NutrientFormulas.Number(Constant)),
                ("per yield", NutrientFormulas.Number(PerYield)),
                ("per test", NutrientFormulas.Number(-PerTest)),
                ("per yield and test", NutrientFormulas.Number(-PerBoth)),
                ("yield", NutrientFormulas.Number(yield)),
                ("test", NutrientFormulas.Number(test))
            )
            .From(Origin.FirstSource);
}
