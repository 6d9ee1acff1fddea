using Google.OrTools.LinearSolver;
using PlotAgronomy.Fertilizers;
using Solver = Google.OrTools.LinearSolver.Solver;

namespace PlotAgronomy.Tests.Fertilizers.Solver;

/// <summary>A general-purpose mixed-integer solver as the second opinion.</summary>
internal sealed class GeneralSolver : IDisposable
{
    private readonly Google.OrTools.LinearSolver.Solver solver = Google.OrTools.LinearSolver.Solver.CreateSolver("SCIP");

    /// <returns>The least cost; infinite when no set of packages fits.</returns>
    internal double Cheapest(PackageProblem problem, bool spreadWhole, int[]? most = null)
    {
        solver.Clear();
        var (bought, spread) = Packages(problem, spreadWhole);
        Limit(bought, most);
        return Cheapest(problem, bought, spread);
    }

    /// <returns>The least cost when any part of a package may be bought; infinite when nothing fits.</returns>
    internal double Weighed(PackageProblem problem, int[]? most = null)
    {
        solver.Clear();
        Variable[] weighed = [.. problem.Price.Select(_ => solver.MakeNumVar(0, double.PositiveInfinity, ""))];
        Limit(weighed, most);
        return Cheapest(problem, weighed, weighed);
    }

    private static void Limit(Variable[] packages, int[]? most)
    {
        for (int product = 0; most is not null && product < packages.Length; product++)
        {
            packages[product].SetUb(most[product] == int.MaxValue ? double.PositiveInfinity : most[product]);
        }
    }

    private double Cheapest(PackageProblem problem, Variable[] bought, Variable[] spread)
    {
        for (int product = 0; product < problem.Products; product++)
        {
            solver.Objective().SetCoefficient(bought[product], problem.Price[product]);
        }

        for (int nutrient = 0; nutrient < problem.Nutrients; nutrient++)
        {
            Deliver(problem, nutrient, spread, problem.Need[nutrient]);
        }

        return Solve();
    }

    /// <returns>The smallest sum of missing shares when needs may be missed and caps may not be passed.</returns>
    internal double SmallestMiss(PackageProblem problem, bool spreadWhole)
    {
        solver.Clear();
        var (_, spread) = Packages(problem, spreadWhole);
        for (int nutrient = 0; nutrient < problem.Nutrients; nutrient++)
        {
            Deliver(problem, nutrient, spread, 0);
            if (problem.Need[nutrient] > 0)
            {
                var missing = solver.MakeNumVar(0, problem.Need[nutrient], "");
                var row = solver.MakeConstraint(problem.Need[nutrient], double.PositiveInfinity);
                row.SetCoefficient(missing, 1);
                for (int product = 0; product < problem.Products; product++)
                {
                    row.SetCoefficient(spread[product], problem[nutrient, product]);
                }

                solver.Objective().SetCoefficient(missing, 1 / problem.Need[nutrient]);
            }
        }

        return Solve();
    }

    private (Variable[] Bought, Variable[] Spread) Packages(PackageProblem problem, bool spreadWhole)
    {
        var bought = new Variable[problem.Products];
        var spread = new Variable[problem.Products];
        for (int product = 0; product < problem.Products; product++)
        {
            bought[product] = solver.MakeIntVar(0, double.PositiveInfinity, "");
            spread[product] = bought[product];
            if (!spreadWhole)
            {
                spread[product] = solver.MakeNumVar(0, double.PositiveInfinity, "");
                solver.Add(spread[product] <= bought[product]);
            }
        }

        return (bought, spread);
    }

    private void Deliver(PackageProblem problem, int nutrient, Variable[] spread, double atLeast)
    {
        var row = solver.MakeConstraint(atLeast, problem.Cap[nutrient]);
        for (int product = 0; product < problem.Products; product++)
        {
            row.SetCoefficient(spread[product], problem[nutrient, product]);
        }
    }

    private double Solve()
    {
        solver.Objective().SetMinimization();
        var parameters = new MPSolverParameters();
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        var status = solver.Solve(parameters);
        return status switch
        {
            Google.OrTools.LinearSolver.Solver.ResultStatus.OPTIMAL => solver.Objective().Value(),
            Google.OrTools.LinearSolver.Solver.ResultStatus.INFEASIBLE => double.PositiveInfinity,
            _ => throw new InvalidOperationException($"The general solver answered {status}."),
        };
    }

    public void Dispose() => solver.Dispose();
}
