using PlotAgronomy.Fertilizers;

namespace PlotAgronomy.Tests.Fertilizers.Solver;

/// <summary>An optimum proves itself: row prices and reduced costs of the right sign at every limit that is not touched are zero, and no
/// other point can cost less (duality of linear programs, any textbook).</summary>
public class DualSimplexTests
{
    private const double Near = 1e-6;

    [Fact]
    public void Every_optimum_carries_its_proof()
    {
        int solved = 0;
        for (int seed = 0; seed < 120; seed++)
        {
            var program = Draw(new Random(seed));
            var simplex = new DualSimplex(program);
            var outcome = simplex.Solve();
            Assert.NotEqual(SimplexOutcome.Stopped, outcome);
            if (outcome == SimplexOutcome.Optimal)
            {
                solved++;
                AssertProven(program, simplex, seed);
            }
        }

        Assert.InRange(solved, 40, 118);
    }

    /// <summary>Far more steps than the quick rule may take: the cautious rule ends the run.</summary>
    [Fact]
    public void A_large_program_carries_its_proof_too()
    {
        var random = new Random(1);
        var program = new LinearProgram(260, 320);
        for (int row = 0; row < program.Rows; row++)
        {
            program.RowLow[row] = random.Next(10, 60);
            for (int column = 0; column < program.Columns; column++)
            {
                program[row, column] = random.Next(3) == 0 ? random.Next(1, 20) : 0;
            }
        }

        for (int column = 0; column < program.Columns; column++)
        {
            program.Cost[column] = random.Next(1, 40);
        }

        var simplex = new DualSimplex(program);
        Assert.Equal(SimplexOutcome.Stopped, simplex.Copy().Solve(double.PositiveInfinity, new SearchWork(220 * simplex.Size)));
        Assert.Equal(SimplexOutcome.Optimal, simplex.Solve());
        AssertProven(program, simplex, 1);
    }

    [Fact]
    public void A_changed_limit_starts_warm_and_ends_where_a_cold_start_does()
    {
        int compared = 0;
        for (int seed = 0; seed < 120; seed++)
        {
            var random = new Random(seed);
            var program = Draw(random);
            var warm = new DualSimplex(program);
            for (int change = 0; change < 4; change++)
            {
                int column = random.Next(program.Columns);
                double low = random.Next(3), high = low + random.Next(4);
                (program.ColumnLow[column], program.ColumnHigh[column]) = (low, high);
                warm.Limit(column, low, high);
                Assert.Equal((low, high), (warm.Low(column), warm.High(column)));
                var kept = warm.Copy();
                var outcome = warm.Solve();
                Assert.Equal(new DualSimplex(program).Solve(), outcome);
                if (outcome == SimplexOutcome.Optimal)
                {
                    compared++;
                    AssertProven(program, warm, seed);
                    AssertProven(program, warm.Copy(), seed);
                    Assert.True(kept.Objective() <= warm.Objective() + Near, $"seed {seed}: the bound before the steps");
                }

                warm.CopyFrom(kept);
                Assert.Equal(outcome, warm.Solve());
            }
        }

        Assert.InRange(compared, 100, 480);
    }

    [Fact]
    public void It_stops_early_only_above_the_cutoff_or_without_work_left()
    {
        int above = 0, stopped = 0;
        for (int seed = 0; seed < 60; seed++)
        {
            var program = Draw(new Random(seed));
            var full = new DualSimplex(program);
            var outcome = full.Solve();
            if (outcome != SimplexOutcome.Optimal)
            {
                continue;
            }

            double best = full.Objective();
            Assert.Equal(SimplexOutcome.Optimal, new DualSimplex(program).Solve(best + Near));
            var cut = new DualSimplex(program);
            above += cut.Solve(best - 1) == SimplexOutcome.AboveCutoff ? 1 : 0;
            Assert.InRange(cut.Objective(), double.NegativeInfinity, best + Near);

            var work = new SearchWork(1);
            var brief = new DualSimplex(program);
            if (brief.Solve(double.PositiveInfinity, work) == SimplexOutcome.Stopped)
            {
                stopped++;
                Assert.True(work.IsSpent);
                Assert.InRange(brief.Objective(), double.NegativeInfinity, best + Near);
            }
        }

        Assert.InRange(above, 10, 60);
        Assert.InRange(stopped, 10, 60);
    }

    /// <summary>The cost of moving a column is the slope of the optimum where the column is forced a little way; farther on the optimum
    /// only rises faster.</summary>
    [Fact]
    public void The_cost_of_moving_is_a_bound_and_near_by_the_cost_itself()
    {
        int compared = 0;
        for (int seed = 0; seed < 80; seed++)
        {
            var program = Draw(new Random(seed));
            var simplex = new DualSimplex(program);
            if (simplex.Solve() != SimplexOutcome.Optimal)
            {
                continue;
            }

            var values = new double[program.Columns];
            simplex.Columns(values);
            for (int column = 0; column < program.Columns; column++)
            {
                bool isBasic = simplex.TryCostOfMoving(column, out double down, out double up);
                if (!isBasic || values[column] < program.ColumnLow[column] + 0.5 || values[column] > program.ColumnHigh[column] - 0.5)
                {
                    continue;
                }

                foreach (double step in (double[])[-1e-4, 1e-4, -0.5, 0.5])
                {
                    var forced = simplex.Copy();
                    double to = values[column] + step;
                    forced.Limit(column, step < 0 ? program.ColumnLow[column] : to, step < 0 ? to : program.ColumnHigh[column]);
                    double rise = forced.Solve() == SimplexOutcome.Optimal ? forced.Objective() - simplex.Objective() : double.PositiveInfinity;
                    double bound = Math.Abs(step) * (step < 0 ? down : up);
                    Assert.True(rise >= bound - Near, $"seed {seed}, column {column}, step {step}: {rise} and {bound}");
                    compared += Math.Abs(step) < 0.01 && (double.IsInfinity(bound) ? double.IsInfinity(rise) : Math.Abs(rise - bound) < 1e-3 * Math.Max(1e-4, bound)) ? 1 : 0;
                }
            }
        }

        Assert.InRange(compared, 100, 10_000);
    }

    [Fact]
    public void A_column_that_earns_without_end_is_refused()
    {
        var program = new LinearProgram(1, 1) { Cost = { [0] = -1 } };
        Assert.Throws<InvalidOperationException>(() => new DualSimplex(program));
    }

    private static LinearProgram Draw(Random random)
    {
        var program = new LinearProgram(1 + random.Next(7), 1 + random.Next(9));
        for (int column = 0; column < program.Columns; column++)
        {
            program.Cost[column] = random.Next(5) == 0 ? 0 : random.Next(1, 500) / 10.0;
            program.ColumnLow[column] = random.Next(5) == 0 ? random.Next(3) : 0;
            program.ColumnHigh[column] = random.Next(4) == 0 ? program.ColumnLow[column] + random.Next(6) : double.PositiveInfinity;
            if (random.Next(6) == 0)
            {
                (program.Cost[column], program.ColumnHigh[column]) = (-program.Cost[column], program.ColumnLow[column] + 1 + random.Next(5));
            }
        }

        for (int row = 0; row < program.Rows; row++)
        {
            program.RowLow[row] = random.Next(4) == 0 ? double.NegativeInfinity : random.Next(0, 80);
            program.RowHigh[row] = random.Next(2) == 0 ? double.PositiveInfinity : Math.Max(0, program.RowLow[row]) + random.Next(60);
            for (int column = 0; column < program.Columns; column++)
            {
                program[row, column] = random.Next(2) == 0 ? random.Next(-4, 20) : 0;
            }
        }

        return program;
    }

    private static void AssertProven(LinearProgram program, DualSimplex simplex, int seed)
    {
        double[] columns = new double[program.Columns], prices = new double[program.Rows], reduced = new double[program.Columns];
        Array.Fill(prices, double.NaN);
        Array.Fill(reduced, double.NaN);
        Assert.Equal((program.Rows + 1) * program.Columns, simplex.Size);
        simplex.Columns(columns);
        simplex.RowPrices(prices);
        simplex.ReducedCosts(reduced);
        double cost = 0;
        for (int column = 0; column < program.Columns; column++)
        {
            cost += program.Cost[column] * columns[column];
            double slope = program.Cost[column];
            for (int row = 0; row < program.Rows; row++)
            {
                slope -= program[row, column] * prices[row];
            }

            Assert.Equal(slope, reduced[column], Near);
            AssertRests(columns[column], program.ColumnLow[column], program.ColumnHigh[column], slope, $"seed {seed}, column {column}");
        }

        for (int row = 0; row < program.Rows; row++)
        {
            double activity = 0;
            for (int column = 0; column < program.Columns; column++)
            {
                activity += program[row, column] * columns[column];
            }

            AssertRests(activity, program.RowLow[row], program.RowHigh[row], prices[row], $"seed {seed}, row {row}");
        }

        Assert.Equal(cost, simplex.Objective(), Near * Math.Max(1, Math.Abs(cost)));
    }

    /// <summary>Within its limits; at the low one where more would cost, at the high one where more would save.</summary>
    private static void AssertRests(double value, double low, double high, double slope, string where)
    {
        Assert.True(value >= low - Near && value <= high + Near, $"{where}: {value} from {low} to {high}");
        Assert.True(slope <= Near || value <= low + Near, $"{where}: {value} off its low limit {low} at {slope}");
        Assert.True(slope >= -Near || value >= high - Near, $"{where}: {value} off its high limit {high} at {slope}");
    }
}
