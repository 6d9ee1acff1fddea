using Google.OrTools.LinearSolver;
using PlotAgronomy.Fertilizers.Solver;
using Solver = Google.OrTools.LinearSolver.Solver;

namespace PlotAgronomy.Tests.Fertilizers.Solver;

/// <summary>A general-purpose mixed-integer solver as the second opinion.</summary>
internal sealed class GeneralSolver : IDisposable
{
    private readonly Google.OrTools.LinearSolver.Solver solver = Google.OrTools.LinearSolver.Solver.CreateSolver("SCIP");

    /// <returns>The least cost; infinite when no set of packages fits.</returns>
    internal double Cheapest(PackageProblem problem, bool spreadWhole)
    {
        solver.Clear();
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

            solver.Objective().SetCoefficient(bought[product], problem.Price[product]);
        }

        for (int nutrient = 0; nutrient < problem.Nutrients; nutrient++)
        {
            var row = solver.MakeConstraint(problem.Need[nutrient], problem.Cap[nutrient]);
            for (int product = 0; product < problem.Products; product++)
            {
                row.SetCoefficient(spread[product], problem[nutrient, product]);
            }
        }

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
