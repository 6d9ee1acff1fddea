using BenchmarkDotNet.Attributes;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Tests.Fertilizers.Solver;

namespace PlotAgronomy.Benchmarks;

/// <summary>The search for the cheapest whole packages, on random shelves that hold a plan.</summary>
[MemoryDiagnoser]
public class CheapestSetBenchmarks
{
    private const int Shelves = 100;

    private readonly List<PackageProblem> problems = [];
    private int next;

    /// <summary>Gets or sets the size: products x nutrients.</summary>
    [Params("4x3", "8x3", "12x3", "12x8", "20x8", "40x8")]
    public string Size { get; set; } = "";

    /// <summary>Gets or sets a value indicating whether every bought package is emptied.</summary>
    [Params(false, true)]
    public bool SpreadWhole { get; set; }

    /// <summary>Draws the shelves.</summary>
    [GlobalSetup]
    public void Draw()
    {
        string[] sides = Size.Split('x');
        for (int seed = 0; problems.Count < Shelves; seed++)
        {
            var problem = RandomShelves.Draw(new Random(seed), int.Parse(sides[0]), int.Parse(sides[1]), kind: 1 + (6 * seed));
            if (PackageSearch.Cheapest(problem, SpreadWhole, default, nodeLimit: 20_000) is { Packages: not null, IsProven: true })
            {
                problems.Add(problem);
            }
        }
    }

    /// <summary>One shelf after the other.</summary>
    /// <returns>The cost.</returns>
    [Benchmark]
    public double Search()
    {
        var reduced = PackageReduction.Of(problems[next++ % Shelves], SpreadWhole);
        return PackageSearch.Cheapest(reduced.Problem, SpreadWhole).Cost;
    }
}
