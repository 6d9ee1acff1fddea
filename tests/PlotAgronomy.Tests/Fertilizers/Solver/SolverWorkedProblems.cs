using PlotAgronomy.Fertilizers;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Fertilizers.Solver;

/// <summary>Small linear programs and least squares with known answers.</summary>
public class SolverWorkedProblems
{
    private const string File = "Fertilizers/Solver/worked-solver.csv";

    /// <summary>The solver wants an upper limit for a column of negative cost; far above the optimum it changes nothing.</summary>
    private const double Far = 1e6;

    public static TheoryData<string> LinearPrograms => WorkedExamples.Ids(File, "lp");

    public static TheoryData<string> LeastSquares => WorkedExamples.Ids(File, "nnls");

    [Theory, MemberData(nameof(LinearPrograms))]
    public void Linear_program_matches(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var program = Program(row.Text("problem"));
        var simplex = new DualSimplex(program);
        Assert.Equal(SimplexOutcome.Optimal, simplex.Solve());
        double[] columns = new double[program.Columns], prices = new double[program.Rows];
        simplex.Columns(columns);
        simplex.RowPrices(prices);
        string quantity = row.Text("quantity");
        WorkedExamples.AssertMatches(row, quantity == "objective" ? simplex.Objective() : quantity[0] == 'x' ? columns[Index(quantity)] : prices[Index(quantity)]);
    }

    [Theory, MemberData(nameof(LeastSquares))]
    public void Least_squares_match(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var items = Items(row.Text("problem"));
        var matrix = new double[items.Max(i => i.Integer("row")), items.Max(i => i.TextOrNull("column") is null ? 0 : i.Integer("column"))];
        var target = new double[matrix.GetLength(0)];
        foreach (var item in items)
        {
            if (item.Text("item") == "d_ls")
            {
                target[item.Integer("row") - 1] = item.Number("value");
            }
            else
            {
                matrix[item.Integer("row") - 1, item.Integer("column") - 1] = item.Number("value");
            }
        }

        var (values, residual) = NonnegativeLeastSquares.Solve(matrix, target);
        string quantity = row.Text("quantity");
        WorkedExamples.AssertMatches(row, quantity == "residual" ? residual : values[Index(quantity)]);
    }

    private static int Index(string quantity) => int.Parse(quantity.AsSpan(quantity[0] == 'x' ? 1 : 4)) - 1;

    private static List<CsvRow> Items(string problem) =>
        [.. WorkedExamples.Table("Fertilizers/Solver/solver-problems.csv").Rows.Where(r => r.Text("problem") == problem)];

    private static LinearProgram Program(string problem)
    {
        var items = Items(problem);
        int rows = items.Where(i => i.TextOrNull("row") is not null).Max(i => i.Integer("row"));
        var program = new LinearProgram(rows, items.Where(i => i.TextOrNull("column") is not null).Max(i => i.Integer("column")));
        foreach (var item in items)
        {
            double value = item.Number("value");
            switch (item.Text("item"))
            {
                case "cost":
                    program.Cost[item.Integer("column") - 1] = value;
                    program.ColumnHigh[item.Integer("column") - 1] = value < 0 ? Far : double.PositiveInfinity;
                    break;
                case "rhs_ge":
                    program.RowLow[item.Integer("row") - 1] = value;
                    break;
                case "rhs_le":
                    program.RowHigh[item.Integer("row") - 1] = value;
                    break;
                default:
                    program[item.Integer("row") - 1, item.Integer("column") - 1] = value;
                    break;
            }
        }

        return program;
    }
}
