using MathNet.Numerics.LinearAlgebra;

namespace PlotAgronomy.Fertilizers;

/// <summary>Finds x of at least 0 that makes the length of (matrix x - target) smallest, by the classical active-set
/// method.</summary>
internal static class NonnegativeLeastSquares
{
    private const double GradientTolerance = 1e-10;

    /// <param name="matrix">Rows by columns.</param>
    /// <param name="target">One value a row.</param>
    /// <returns>The values and the length of what is left.</returns>
    internal static (double[] Values, double Residual) Solve(double[,] matrix, ReadOnlySpan<double> target)
    {
        int columns = matrix.GetLength(1);
        var values = new double[columns];
        var active = new List<int>();
        for (int round = 0; round < (3 * columns) + 10; round++)
        {
            double[] residual = Residual(matrix, target, values);
            int entering = SteepestColumn(matrix, residual, active, Length(target));
            if (entering < 0)
            {
                return (values, Length(residual));
            }

            active.Add(entering);
            Settle(matrix, target, values, active);
        }

        return (values, Length(Residual(matrix, target, values)));
    }

    /// <summary>Solves for the active columns; while one would go negative, walks only as far as zero and lets it go.</summary>
    private static void Settle(double[,] matrix, ReadOnlySpan<double> target, double[] values, List<int> active)
    {
        while (active.Count > 0)
        {
            double[] trial = Unbounded(matrix, target, active);
            double walk = 1;
            for (int i = 0; i < active.Count; i++)
            {
                double now = values[active[i]];
                walk = trial[i] <= 0 ? Math.Min(walk, now / (now - trial[i])) : walk;
            }

            bool whole = trial.All(t => t > 0);
            for (int i = 0; i < active.Count; i++)
            {
                values[active[i]] += (whole ? 1 : walk) * (trial[i] - values[active[i]]);
            }

            if (whole)
            {
                return;
            }

            for (int i = active.Count - 1; i >= 0; i--)
            {
                if (trial[i] <= 0 && values[active[i]] <= GradientTolerance)
                {
                    values[active[i]] = 0;
                    active.RemoveAt(i);
                }
            }
        }
    }

    /// <summary>Ordinary least squares over the active columns.</summary>
    private static double[] Unbounded(double[,] matrix, ReadOnlySpan<double> target, List<int> active)
    {
        var part = Matrix<double>.Build.Dense(target.Length, active.Count, (row, column) => matrix[row, active[column]]);
        return part.QR().Solve(Vector<double>.Build.Dense(target.ToArray())).ToArray();
    }

    private static int SteepestColumn(double[,] matrix, double[] residual, List<int> active, double scale)
    {
        int chosen = -1;
        double steepest = GradientTolerance * Math.Max(1, scale);
        for (int column = 0; column < matrix.GetLength(1); column++)
        {
            double slope = 0;
            for (int row = 0; row < residual.Length; row++)
            {
                slope += matrix[row, column] * residual[row];
            }

            if (slope > steepest && !active.Contains(column))
            {
                steepest = slope;
                chosen = column;
            }
        }

        return chosen;
    }

    private static double[] Residual(double[,] matrix, ReadOnlySpan<double> target, double[] values)
    {
        var residual = new double[target.Length];
        for (int row = 0; row < residual.Length; row++)
        {
            residual[row] = target[row];
            for (int column = 0; column < values.Length; column++)
            {
                residual[row] -= matrix[row, column] * values[column];
            }
        }

        return residual;
    }

    private static double Length(ReadOnlySpan<double> vector)
    {
        double sum = 0;
        foreach (double part in vector)
        {
            sum += part * part;
        }

        return Math.Sqrt(sum);
    }
}
