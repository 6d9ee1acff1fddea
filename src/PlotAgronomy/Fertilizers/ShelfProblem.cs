using System.Collections.Immutable;
using PlotAgronomy.Fertilizers.Solver;
using PlotAgronomy.Nutrients;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>A need, a plot and a shelf as the solver sees them: pounds on the plot, packages, prices.</summary>
internal sealed class ShelfProblem
{
    private ShelfProblem(ImmutableArray<FertilizerProduct> products, ImmutableArray<NutrientTarget> targets, double acres, PackageProblem packages, double[] load) =>
        (Products, Targets, Acres, Packages, Load) = (products, targets, acres, packages, load);

    internal ImmutableArray<FertilizerProduct> Products { get; }

    internal ImmutableArray<NutrientTarget> Targets { get; }

    internal double Acres { get; }

    internal PackageProblem Packages { get; }

    /// <summary>Pounds that one package of each product brings to the ground.</summary>
    internal double[] Load { get; }

    internal static ShelfProblem Of(ImmutableArray<FertilizerProduct> products, PlotNeed need, Area area)
    {
        double acres = area.Acres;
        var targets = need.Targets;
        var packages = new PackageProblem(targets.Length, products.Length);
        var load = new double[products.Length];
        for (int row = 0; row < targets.Length; row++)
        {
            packages.Need[row] = targets[row].AtLeast.PoundsPerAcre * acres;
            packages.Cap[row] = targets[row].AtMost is { } most ? most.PoundsPerAcre * acres : double.PositiveInfinity;
        }

        for (int column = 0; column < products.Length; column++)
        {
            var product = products[column];
            double packagePounds = product.Package.Pounds;
            packages.Price[column] = (double)product.Price;
            load[column] = PlanSolver.Load(packagePounds * FertilizerMaterial.PrimarySum(product.Analysis) / 100, packagePounds);
            for (int row = 0; row < targets.Length; row++)
            {
                packages[row, column] = packagePounds * product.Analysis.Percent(targets[row].Nutrient) / 100;
            }
        }

        return new ShelfProblem(products, targets, acres, packages, load);
    }

    /// <summary>The same need and plot with one more product.</summary>
    internal ShelfProblem Adding(FertilizerProduct product, PlotNeed need, Area area) => Of([.. Products, product], need, area);
}
