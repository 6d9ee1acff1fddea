using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>A need, a plot and a shelf as the solver sees them: pounds on the plot, packages, prices.</summary>
internal sealed class ShelfProblem
{
    private const int SeedRows = 2;

    /// <summary>Pounds of a nutrient on the whole plot that nobody can weigh, half a milligram.</summary>
    private const double DustPounds = 1e-6;

    /// <summary>So little counts a pound of what is there for nothing beside a bought one, when it is chosen what to
    /// spread.</summary>
    private const double ShedFirst = 1e-3;

    private ShelfProblem(
        ImmutableArray<Offer<FertilizerProduct>> offers,
        ImmutableArray<NutrientTarget> targets,
        double acres,
        PackageProblem packages,
        double[] load
    ) => (Offers, Targets, Acres, Packages, Load) = (offers, targets, acres, packages, load);

    private ShelfProblem(ShelfProblem same)
        : this(same.Offers, same.Targets, same.Acres, same.Packages, same.Load) { }

    internal ImmutableArray<Offer<FertilizerProduct>> Offers { get; }

    internal ImmutableArray<NutrientTarget> Targets { get; }

    internal double Acres { get; }

    internal PackageProblem Packages { get; }

    /// <summary>Pounds that one package of each product brings to the ground.</summary>
    internal double[] Load { get; }

    /// <summary>Rows behind those of the targets: the salt of the seed row, and what must not lie there at all.</summary>
    internal bool IsSeedRow(int row) => row >= Targets.Length;

    internal static ShelfProblem Of(
        ImmutableArray<Offer<FertilizerProduct>> offers,
        PlotNeed need,
        Area area,
        SeedPlacedLimit? seedRow
    )
    {
        double acres = area.Acres;
        var targets = need.Targets;
        var packages = new PackageProblem(targets.Length + (seedRow is null ? 0 : SeedRows), offers.Length)
        {
            Most = offers.All(o => o.Available is null) ? null : [.. offers.Select(o => o.Available ?? int.MaxValue)],
        };
        var load = new double[offers.Length];
        for (int row = 0; row < targets.Length; row++)
        {
            double pounds = targets[row].AtLeast.PoundsPerAcre * acres;
            packages.Need[row] = pounds < DustPounds ? 0 : pounds;
            packages.Cap[row] = targets[row].AtMost is { } most ? most.PoundsPerAcre * acres : double.PositiveInfinity;
        }

        for (int column = 0; column < offers.Length; column++)
        {
            var product = offers[column].Item;
            double packagePounds = offers[column].Package.Pounds;
            packages.Price[column] = (double)offers[column].Price;
            load[column] =
                PackageSolver.Load(packagePounds * FertilizerMaterial.PrimarySum(product.Analysis) / 100, packagePounds)
                * (IsInShed(offers[column]) ? ShedFirst : 1);
            for (int row = 0; row < targets.Length; row++)
            {
                packages[row, column] = FertilizerMath.NutrientIn(packagePounds, product.Counted.Percent(targets[row].Nutrient));
            }
        }

        if (seedRow is not null)
        {
            CapSeedRow(packages, offers, targets.Length, seedRow, acres);
        }

        return new ShelfProblem(offers, targets, acres, packages, load);
    }

    /// <summary>Whether offers were left aside because there are more than any store has, so that no set is proven.</summary>
    internal bool IsChosen { get; private init; }

    /// <summary>A bound of what any set of all the offers costs; nothing where no offer was left aside.</summary>
    internal double LowestCost { get; private init; }

    /// <summary>The same without offers that only repeat others, and of a shelf that is still too long the offers that are worth
    /// looking at.</summary>
    internal ShelfProblem Shortened(PlotNeed need, Area area, SeedPlacedLimit? seedRow)
    {
        if (Offers.Length <= LongShelf.Most)
        {
            return this;
        }

        var unlike = Keeping(Dominance.OfEach(Packages, copies: 2), need, area, seedRow);
        return LongShelf.Chosen(unlike.Packages) is not { } chosen
            ? unlike
            : new ShelfProblem(unlike.Keeping(chosen, need, area, seedRow))
            {
                IsChosen = true,
                LowestCost = LongShelf.LowestCost(unlike.Packages),
            };
    }

    private ShelfProblem Keeping(int[] places, PlotNeed need, Area area, SeedPlacedLimit? seedRow) =>
        Of([.. places.Select(p => Offers[p])], need, area, seedRow);

    /// <summary>The same need and plot with one more product.</summary>
    internal ShelfProblem Adding(Offer<FertilizerProduct> offer, PlotNeed need, Area area, SeedPlacedLimit? seedRow) =>
        Of([.. Offers, offer], need, area, seedRow);

    private static bool IsInShed(Offer<FertilizerProduct> offer) => offer is { Available: not null, Price: 0 };

    private static void CapSeedRow(
        PackageProblem packages,
        ImmutableArray<Offer<FertilizerProduct>> offers,
        int firstRow,
        SeedPlacedLimit seedRow,
        double acres
    )
    {
        packages.Cap[firstRow] = seedRow.Limit is { } limit
            ? limit.PoundsPerAcre * acres
            : throw new ArgumentException(
                $"The seed-row limit of {FertilizerWords.SeedRowCrops[seedRow.Crop]} is stated as a part of corn's: take "
                    + "corn's limit times that part.",
                nameof(seedRow)
            );
        packages.Cap[firstRow + 1] = 0;
        for (int column = 0; column < offers.Length; column++)
        {
            double packagePounds = offers[column].Package.Pounds;
            packages[firstRow, column] = FertilizerMath.NutrientIn(
                packagePounds,
                seedRow.CountedPercent(offers[column].Item.Counted)
            );
            packages[firstRow + 1, column] = SeedPlacedLimit.IsBarredFromTheRow(offers[column].Item.Substance)
                ? packagePounds
                : 0;
        }
    }
}
