using System.Collections.Immutable;

namespace PlotAgronomy.Fertilizers;

/// <summary>A blend per pound of batch: parts of each material, in lb per lb.</summary>
internal sealed class BlendProblem
{
    private readonly FertilizerAnalysis wanted;
    private readonly ImmutableArray<FertilizerProduct> materials;
    private readonly ImmutableArray<PlantNutrient> named;

    internal BlendProblem(FertilizerAnalysis wanted, ImmutableArray<FertilizerProduct> materials)
    {
        this.wanted = wanted;
        this.materials = materials;
        named = [.. Enum.GetValues<PlantNutrient>().Where(n => (int)n < 3 || wanted.Percent(n) > 0)];
    }

    /// <summary>Parts of the cheapest recipe (of the lightest, where nothing has a price); null when none fits into the
    /// batch.</summary>
    internal double[]? LeastCost()
    {
        double[] prices = [.. materials.Select(m => (double)m.PricePerPound)];
        return Solve(prices.Any(p => p > 0) ? prices : Ones(), mustFit: true, null);
    }

    /// <summary>Strongest grade of the wanted ratio, as a share of the wanted one; null when the ratio cannot be made.</summary>
    internal double? HighestShare() =>
        Solve(Ones(), mustFit: false, null) is { } lightest ? 1 / Math.Max(lightest.Sum(), 1e-300) : null;

    /// <summary>What each nutrient could be, the others as wanted and everything within the batch.</summary>
    internal ImmutableArray<(PlantNutrient Nutrient, PercentRange Possible)> Ranges()
    {
        var ranges = ImmutableArray.CreateBuilder<(PlantNutrient, PercentRange)>();
        foreach (var free in named)
        {
            double[] content = [.. materials.Select(m => m.Analysis.Percent(free))];
            if (
                Solve(content, mustFit: true, free) is { } least
                && Solve(Array.ConvertAll(content, c => -c), mustFit: true, free) is { } most
            )
            {
                ranges.Add((free, new PercentRange(Sum(content, least), Sum(content, most))));
            }
        }

        return ranges.ToImmutable();
    }

    private double[]? Solve(double[] cost, bool mustFit, PlantNutrient? free)
    {
        var program = new LinearProgram(named.Length + 1, materials.Length);
        cost.CopyTo(program.Cost, 0);
        Array.Fill(program.ColumnHigh, mustFit ? 1 : double.PositiveInfinity);
        for (int row = 0; row < named.Length; row++)
        {
            bool held = named[row] != free;
            program.RowLow[row] = held ? wanted.Percent(named[row]) : double.NegativeInfinity;
            program.RowHigh[row] = held ? wanted.Percent(named[row]) : double.PositiveInfinity;
            for (int column = 0; column < materials.Length; column++)
            {
                program[row, column] = materials[column].Analysis.Percent(named[row]);
            }
        }

        program.RowHigh[named.Length] = mustFit ? 1 : double.PositiveInfinity;
        for (int column = 0; column < materials.Length; column++)
        {
            program[named.Length, column] = 1;
        }

        var simplex = new DualSimplex(program);
        if (simplex.Solve() != SimplexOutcome.Optimal)
        {
            return null;
        }

        var parts = new double[materials.Length];
        simplex.Columns(parts);
        return Array.ConvertAll(parts, p => Math.Max(0, p));
    }

    private double[] Ones() => [.. materials.Select(_ => 1.0)];

    private static double Sum(double[] content, double[] parts) => content.Zip(parts, (c, p) => c * p).Sum();
}
