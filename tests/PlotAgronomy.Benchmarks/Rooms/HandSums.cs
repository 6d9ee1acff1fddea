using PlotAgronomy.Land;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>Sums as a programmer would write them for one case.</summary>
internal static class HandSums
{
    /// <summary>Area by the shoelace.</summary>
    internal static double SquareFeet(PlanePoint[] corners)
    {
        double twice = 0;
        for (int i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
            twice += (a.EastFeet * b.NorthFeet) - (b.EastFeet * a.NorthFeet);
        }

        return Math.Abs(twice) / 2;
    }

    /// <summary>Bulk seed of blends, the shares of each after those of the other.</summary>
    internal static double BulkPounds(double[] shares, double[] fullRates, double purity, double viability)
    {
        double pounds = 0;
        for (int i = 0; i < shares.Length; i++)
        {
            if (!(shares[i] > 0 && shares[i] <= double.MaxValue))
            {
                throw new ArgumentOutOfRangeException(nameof(shares), shares[i], "Must be above 0.");
            }

            pounds += shares[i] * fullRates[i % fullRates.Length] / (purity * viability);
        }

        return pounds;
    }

    /// <summary>Evaporation of days in a row by Hargreaves, in mm, with the sun of each day.</summary>
    internal static double Hargreaves(double latitude, int firstDayOfYear, double[] low, double[] range)
    {
        double phi = latitude * Math.PI / 180;
        double sum = 0;
        for (int i = 0; i < low.Length; i++)
        {
            double angle = 2 * Math.PI * (firstDayOfYear + i) / 365;
            double declination = 0.409 * Math.Sin(angle - 1.39);
            double sunset = Math.Acos(-Math.Tan(phi) * Math.Tan(declination));
            double sun = 24 * 60 / Math.PI * 0.082 * (1 + (0.033 * Math.Cos(angle)))
                * ((sunset * Math.Sin(phi) * Math.Sin(declination)) + (Math.Cos(phi) * Math.Cos(declination) * Math.Sin(sunset)));
            sum += 0.0023 * (low[i] + (range[i] / 2) + 17.8) * Math.Sqrt(range[i]) * 0.408 * sun;
        }

        return sum;
    }
}
