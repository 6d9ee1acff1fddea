using PlotAgronomy.Columns;

namespace PlotAgronomy.Benchmarks;

/// <summary>Columns as a programmer would write them for one method each: the same checks and the same three outputs, with the
/// publication's numbers typed into the loop.</summary>
internal static class HandLoops
{
    private const double Dust = 1e-9;

    /// <summary>North Carolina's equation by the Mehlich buffer (LIME-S7).</summary>
    internal static void NorthCarolina(double target, double[] waterPh, double[] buffer, double[] rates, RowStatus[] status, ulong[] flags)
    {
        for (int i = 0; i < waterPh.Length; i++)
        {
            double ph = waterPh[i];
            double read = buffer[i];
            if (CannotBe(ph, read) || Contradicts(ph, read, 6.6, 6.6))
            {
                (rates[i], status[i], flags[i]) = (double.NaN, RowStatus.Implausible, 1);
            }
            else if (ph >= target)
            {
                (rates[i], status[i], flags[i]) = (0, RowStatus.NoneNeeded, 2);
            }
            else if (double.IsNaN(ph) || double.IsNaN(read))
            {
                (rates[i], status[i], flags[i]) = (double.NaN, RowStatus.Missing, 4);
            }
            else if (read < 4 - (4 * Dust))
            {
                (rates[i], status[i], flags[i]) = (double.NaN, RowStatus.OutsideDomain, 8);
            }
            else if (read > 6.6 + (6.6 * Dust))
            {
                (rates[i], status[i], flags[i]) = (0, RowStatus.NoneNeeded, 16);
            }
            else
            {
                double pounds = 2000 * (4 * (6.6 - read) * (target - ph) / (6.6 - ph));
                (rates[i], status[i], flags[i]) = pounds > 0 ? (pounds, RowStatus.Answered, 0UL) : (0, RowStatus.NoneNeeded, 32);
            }
        }
    }

    /// <summary>Wisconsin's equation to pH 6.5 by the SMP buffer (LIME-WI1, from memory).</summary>
    internal static void Wisconsin(double[] waterPh, double[] buffer, double[] rates, RowStatus[] status, ulong[] flags)
    {
        for (int i = 0; i < waterPh.Length; i++)
        {
            double ph = waterPh[i];
            double read = buffer[i];
            if (CannotBe(ph, read) || Contradicts(ph, read, 7.5, 7.0))
            {
                (rates[i], status[i], flags[i]) = (double.NaN, RowStatus.Implausible, 1);
            }
            else if (ph >= 6.5)
            {
                (rates[i], status[i], flags[i]) = (0, RowStatus.NoneNeeded, 2);
            }
            else if (double.IsNaN(ph) || double.IsNaN(read))
            {
                (rates[i], status[i], flags[i]) = (double.NaN, RowStatus.Missing, 4);
            }
            else if (read < 4.8 - (4.8 * Dust) || read > 7 + (7 * Dust))
            {
                (rates[i], status[i], flags[i]) = (double.NaN, RowStatus.OutsideDomain, read > 7 ? 8UL + 64 : 8);
            }
            else
            {
                double pounds = (134 - (17.2 * read) - (2.73 * ph)) * 2000;
                ulong high = read > 7 ? 64UL : 0;
                (rates[i], status[i], flags[i]) = pounds > 0 ? (pounds, RowStatus.Answered, high) : (0, RowStatus.NoneNeeded, 32 | high);
            }
        }
    }

    /// <summary>A table of rates by buffer pH in steps of 0.1 from 4.8 on, the Sikora table of Oregon (LIME-S10).</summary>
    internal static void Oregon(double[] table, double target, double[] waterPh, double[] buffer, double[] rates, RowStatus[] status, ulong[] flags)
    {
        for (int i = 0; i < waterPh.Length; i++)
        {
            double ph = waterPh[i];
            double read = buffer[i];
            if (CannotBe(ph, read) || Contradicts(ph, read, 7.5, 7.0))
            {
                (rates[i], status[i], flags[i]) = (double.NaN, RowStatus.Implausible, 1);
            }
            else if (ph >= target)
            {
                (rates[i], status[i], flags[i]) = (0, RowStatus.NoneNeeded, 2);
            }
            else if (double.IsNaN(read))
            {
                (rates[i], status[i], flags[i]) = (double.NaN, RowStatus.Missing, 4);
            }
            else if (read < 4.8 - (4.8 * Dust) || read > 6.9 + (6.9 * Dust))
            {
                (rates[i], status[i], flags[i]) = (double.NaN, RowStatus.OutsideDomain, read > 7 ? 8UL + 64 : 8);
            }
            else
            {
                double at = (read - 4.8) * 10;
                int below = Math.Min((int)at, table.Length - 2);
                double pounds = table[below] + ((at - below) * (table[below + 1] - table[below]));
                ulong found = (double.IsNaN(ph) ? 128UL : 0) | (Math.Abs(at - Math.Round(at, MidpointRounding.ToEven)) < 1e-7 ? 0 : 256UL);
                (rates[i], status[i], flags[i]) = pounds > 0 ? (pounds, RowStatus.Answered, found) : (0, RowStatus.NoneNeeded, found);
            }
        }
    }

    /// <summary>Bulk seed by germination and hard seed.</summary>
    internal static void BulkSeed(double[] live, double[] pure, double[] germination, double[] hard, double[] rates, RowStatus[] status, ulong[] flags)
    {
        for (int i = 0; i < live.Length; i++)
        {
            double g = germination[i] / 100;
            double h = hard[i] / 100;
            if (live[i] < 0 || pure[i] <= 0 || pure[i] > 100 || germination[i] < 0 || germination[i] > 100 || hard[i] < 0 || hard[i] > 100 || g + h > 1.0005)
            {
                (rates[i], status[i], flags[i]) = (double.NaN, RowStatus.Implausible, 1);
                continue;
            }

            double part = pure[i] / 100 * Math.Min(1, g + h);
            double bulk = live[i] / part;
            (rates[i], status[i], flags[i]) =
                double.IsNaN(live[i] + part) ? (double.NaN, RowStatus.Missing, 2UL)
                : part == 0 ? (double.NaN, RowStatus.OutsideDomain, 4UL)
                : live[i] == 0 ? (0, RowStatus.NoneNeeded, 0UL)
                : double.IsInfinity(bulk) ? (double.NaN, RowStatus.Implausible, 1UL)
                : (bulk, RowStatus.Answered, part < 0.6 ? 8UL : 0);
        }
    }

    /// <summary>lb/ac from lb/min, mph and ft.</summary>
    internal static void Spreader(double[] flow, double[] pace, double[] swath, double[] rates, RowStatus[] status, ulong[] flags)
    {
        for (int i = 0; i < flow.Length; i++)
        {
            double rate = flow[i] * 495 / (pace[i] * swath[i]);
            (rates[i], status[i], flags[i]) =
                flow[i] <= 0 || pace[i] <= 0 || swath[i] <= 0 ? (double.NaN, RowStatus.Implausible, 1UL)
                : double.IsNaN(rate) ? (double.NaN, RowStatus.Missing, 2UL)
                : flow[i] > 3000 || pace[i] < 0.3 || pace[i] > 20 || swath[i] < 0.25 || swath[i] > 120 || rate > 40_000 ? (double.NaN, RowStatus.Implausible, 4UL)
                : (rate, RowStatus.Answered, 0UL);
        }
    }

    /// <summary>Live seeds on a square foot from lb/ac and seeds in a pound.</summary>
    internal static void SeedDensity(double[] live, double[] seedsPerPound, double[] densities, RowStatus[] status, ulong[] flags)
    {
        for (int i = 0; i < live.Length; i++)
        {
            double density = live[i] * seedsPerPound[i] / 43_560;
            (densities[i], status[i], flags[i]) =
                live[i] < 0 || double.IsInfinity(live[i]) || seedsPerPound[i] <= 0 || double.IsInfinity(density) ? (double.NaN, RowStatus.Implausible, 1UL)
                : double.IsNaN(density) ? (double.NaN, RowStatus.Missing, 2UL)
                : density == 0 ? (0, RowStatus.NoneNeeded, 0UL)
                : (density, RowStatus.Answered, 0UL);
        }
    }

    /// <summary>Exchange capacity with 12 x (7 - SMP buffer pH) up to water pH 6.4.</summary>
    internal static void Exchange(double[] k, double[] mg, double[] ca, double[] buffer, double[] waterPh, double[] capacities, RowStatus[] status, ulong[] flags)
    {
        for (int i = 0; i < k.Length; i++)
        {
            double read = buffer[i];
            double ph = waterPh[i];
            ulong noted = ph > 7.2 ? 64UL : 0;
            (capacities[i], status[i], flags[i]) =
                k[i] < 0 || mg[i] < 0 || ca[i] < 0 || CannotBe(ph, read) ? (double.NaN, RowStatus.Implausible, 1UL)
                : Contradicts(ph, read, 7.5, 7.0) ? (double.NaN, RowStatus.Implausible, 4UL)
                : double.IsNaN(read) ? (double.NaN, RowStatus.Missing, 16 | noted)
                : double.IsNaN(k[i] + mg[i] + ca[i]) ? (double.NaN, RowStatus.Missing, 2 | noted)
                : ph > 6.4 ? (double.NaN, RowStatus.OutsideDomain, 128 | noted)
                : ((k[i] / 390) + (mg[i] / 120) + (ca[i] / 200) + (read >= 7 ? 0 : 12 * (7 - read)), RowStatus.Answered, read >= 7 ? 32 | noted : noted);
        }
    }

    /// <summary>Phosphate of corn that is browsed, Tri-State 2020 (SOIL-TS1b, SOIL-TS7).</summary>
    internal static void Phosphate(double[] test, double[] rates, RowStatus[] status, ulong[] flags)
    {
        for (int i = 0; i < test.Length; i++)
        {
            double ppm = test[i];
            if (!(ppm >= 0 && ppm <= double.MaxValue))
            {
                (rates[i], status[i], flags[i]) = double.IsNaN(ppm) ? (ppm, RowStatus.Missing, 2UL) : (double.NaN, RowStatus.Implausible, 1UL);
            }
            else
            {
                double pounds = Math.Max(0, 20 - ppm) * 5;
                (rates[i], status[i], flags[i]) = (pounds, pounds == 0 ? RowStatus.NoneNeeded : RowStatus.Answered, 0);
            }
        }
    }

    /// <summary>Potash of corn that is browsed, Tri-State 2020 (SOIL-TS6, SOIL-TS7).</summary>
    internal static void Potash(double[] test, double[] capacity, double[] rates, RowStatus[] status, ulong[] flags)
    {
        for (int i = 0; i < test.Length; i++)
        {
            double ppm = test[i];
            double meq = capacity[i];
            if (ppm < 0 || double.IsInfinity(ppm) || meq < 0 || meq > 300)
            {
                (rates[i], status[i], flags[i]) = (double.NaN, RowStatus.Implausible, 1UL);
            }
            else if (double.IsNaN(ppm + meq))
            {
                (rates[i], status[i], flags[i]) = (double.NaN, RowStatus.Missing, 2UL);
            }
            else
            {
                double pounds = Math.Max(0, (meq <= 5 ? 100 : 120) - ppm) * (1 + (0.05 * meq));
                (rates[i], status[i], flags[i]) = (pounds, pounds == 0 ? RowStatus.NoneNeeded : RowStatus.Answered, 0);
            }
        }
    }

    private static bool CannotBe(double ph, double read) => ph <= 0 || ph > 14 || read <= 0 || read > 14;

    private static bool Contradicts(double ph, double read, double start, double noAcidityFrom) =>
        (ph - read >= 0.2 - (0.2 * Dust) && read < 6.5 && (ph <= start + (start * Dust) || start - read >= 0.5 - (0.5 * Dust)))
        || (ph <= 5 && read >= noAcidityFrom - (noAcidityFrom * Dust));
}
