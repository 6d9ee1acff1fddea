using PlotAgronomy.Fertilizers;

namespace PlotAgronomy.Tests.Fertilizers.Solver;

/// <summary>The conditions of Karush, Kuhn and Tucker, which hold at the least squares of no negative share and nowhere else: what is used
/// cannot be bettered by more or less of it, what is not used would only make it worse.</summary>
public class NonnegativeLeastSquaresTests
{
    [Fact]
    public void No_share_can_be_bettered()
    {
        int unused = 0, together = 0;
        for (int seed = 0; seed < 150; seed++)
        {
            var random = new Random(seed);
            var matrix = new double[1 + random.Next(6), 1 + random.Next(7)];
            double[] target = [.. Enumerable.Range(0, matrix.GetLength(0)).Select(_ => (double)random.Next(0, 120))];
            for (int row = 0; row < matrix.GetLength(0); row++)
            {
                for (int column = 0; column < matrix.GetLength(1); column++)
                {
                    matrix[row, column] = random.Next(2) == 0 ? random.Next(seed % 3 == 0 ? -20 : 0, 60) / 100.0 : 0;
                }
            }

            var (values, length) = NonnegativeLeastSquares.Solve(matrix, target);
            double[] missing = [.. target.Select((t, row) => t - values.Select((v, column) => matrix[row, column] * v).Sum())];
            Assert.Equal(Math.Sqrt(missing.Sum(m => m * m)), length, 1e-9 * Math.Max(1, length));
            for (int column = 0; column < values.Length; column++)
            {
                double slope = missing.Select((m, row) => matrix[row, column] * m).Sum();
                Assert.True(values[column] >= 0 && (values[column] > 0 ? Math.Abs(slope) : slope) < 1e-7, $"seed {seed}, column {column}: {values[column]:R} at {slope:R}");
                unused += values[column] == 0 ? 1 : 0;
            }

            together += values.Count(v => v > 0) > 1 ? 1 : 0;
        }

        Assert.True(unused > 100 && together > 40, $"{unused} and {together}");
    }
}
