namespace PlotAgronomy.Weather;

/// <summary>Chances and amounts of rain as doubles: chances from 0 to 1, amounts in one unit throughout.</summary>
internal static class RainMath
{
    private const int Cells = 1000;

    internal static double MeanIfItRains(double amount, double chance) => amount / chance;

    internal static double StrongestPeriod(double soFar, double period) => Math.Max(soFar, period);

    internal static double IndependentPeriods(double soFar, double period) => 1 - ((1 - soFar) * (1 - period));

    internal static double SumOfPeriods(double soFar, double period) => Math.Min(1, soFar + period);

    internal static double AtLeastPatchy(double chance, double atLeast, double mean) => chance * Math.Exp(-atLeast / mean);

    internal static double AtLeastGeneral(double chance, double atLeast, double mean, double shape)
    {
        double y = shape * atLeast / mean;
        return chance * Math.Exp(-y) * (1 + y + (y * y / 2));
    }

    internal static double ExceededWith(double mean, double chance, double wanted) => mean * Math.Log(chance / wanted);

    internal static double Rate(double amount, double hours) => amount / hours;

    /// <summary>Chance that one event brings at least an amount.</summary>
    internal static double AtLeast(RainShape shape, double chance, double atLeast, double amount)
    {
        if (chance <= 0 || amount <= 0)
        {
            return 0;
        }

        double mean = MeanIfItRains(amount, chance);
        return shape == RainShape.Patchy
            ? AtLeastPatchy(chance, atLeast, mean)
            : AtLeastGeneral(chance, atLeast, mean, WeatherConstants.All["general-rain-shape"]);
    }

    /// <summary>Chance that periods independent of each other bring at least an amount together.</summary>
    /// <remarks>The amounts are rounded to a thousandth part of the wanted one, and their distributions are folded.</remarks>
    internal static double AtLeast(RainShape shape, IEnumerable<(double Chance, double Amount)> periods, double atLeast)
    {
        double[] sum = new double[Cells + 1];
        sum[0] = 1;
        double step = atLeast / Cells;
        foreach (var (chance, amount) in periods.Where(p => p is { Chance: > 0, Amount: > 0 }))
        {
            double[] mass = new double[Cells + 1];
            double above = chance;
            for (int cell = 0; cell <= Cells; cell++)
            {
                double beyond = AtLeast(shape, chance, (cell + 0.5) * step, amount);
                mass[cell] = above - beyond + (cell == 0 ? 1 - chance : 0);
                above = beyond;
            }

            sum = Fold(sum, mass);
        }

        return Math.Max(0, 1 - sum.Sum() + (sum[Cells] / 2));
    }

    private static double[] Fold(double[] left, double[] right)
    {
        double[] folded = new double[Cells + 1];
        for (int i = 0; i <= Cells; i++)
        {
            if (left[i] > 0)
            {
                for (int j = 0; j <= Cells - i; j++)
                {
                    folded[i + j] += left[i] * right[j];
                }
            }
        }

        return folded;
    }
}
