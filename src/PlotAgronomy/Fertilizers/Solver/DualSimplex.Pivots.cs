namespace PlotAgronomy.Fertilizers;

/// <content>The iterations.</content>
internal sealed partial class DualSimplex
{
    private const int PivotsBeforeCautiousRule = 200;
    private const int MostPivots = 20_000;

    /// <summary>Pivots until every variable is within its limits.</summary>
    /// <param name="cutoff">Stop as soon as the optimum is known to cost more than this.</param>
    /// <param name="work">What may still be done; none given: as much as one program takes.</param>
    internal SimplexOutcome Solve(double cutoff = double.PositiveInfinity, SearchWork? work = null)
    {
        work ??= new SearchWork(long.MaxValue);
        for (int pivots = 0; pivots < MostPivots; pivots++)
        {
            // The smallest-index rule cannot cycle; it is slow, so it takes over only when a run is suspiciously long.
            bool cautious = pivots >= PivotsBeforeCautiousRule;
            int row = LeavingRow(cautious, out bool belowLow);
            if (row < 0)
            {
                return SimplexOutcome.Optimal;
            }

            int place = EnteringPlace(row, belowLow, cautious);
            if (place < 0)
            {
                return SimplexOutcome.Infeasible;
            }

            if (work.IsSpent)
            {
                return SimplexOutcome.Stopped;
            }

            Pivot(row, place, belowLow);
            work.Add(Size);
            if (cutoff < double.PositiveInfinity && Objective() > cutoff)
            {
                return SimplexOutcome.AboveCutoff;
            }
        }

        // Numbers too far apart in size: the program does not settle.
        return SimplexOutcome.Stopped;
    }

    /// <summary>Least rise of the optimum when a basic column must fall by one, or rise by one; infinite when it
    /// cannot.</summary>
    /// <returns>False when the column is not basic.</returns>
    internal bool TryCostOfMoving(int column, out double perUnitDown, out double perUnitUp)
    {
        perUnitDown = perUnitUp = 0;
        int row = Array.IndexOf(basic, column);
        if (row < 0)
        {
            return false;
        }

        perUnitDown = LeastRatio(row, -1);
        perUnitUp = LeastRatio(row, 1);
        return true;
    }

    private int LeavingRow(bool cautious, out bool belowLow)
    {
        int chosen = -1;
        double worst = FeasibilityTolerance;
        belowLow = false;
        for (int row = 0; row < rows; row++)
        {
            int variable = basic[row];
            double under = low[variable] - basicValue[row];
            double over = basicValue[row] - high[variable];
            double violation = Math.Max(under, over);
            bool better = cautious
                ? violation > FeasibilityTolerance && (chosen < 0 || variable < basic[chosen])
                : violation > worst;
            if (better)
            {
                chosen = row;
                worst = violation;
                belowLow = under > over;
            }
        }

        return chosen;
    }

    private int EnteringPlace(int row, bool belowLow, bool cautious)
    {
        int chosen = -1;
        double direction = belowLow ? 1 : -1,
            leastRatio = double.PositiveInfinity,
            largestPivot = 0;
        var line = dictionary.AsSpan(row * columns, columns);
        for (int place = 0; place < columns; place++)
        {
            double pivot = direction * line[place];
            if (!CanHelp(place, pivot))
            {
                continue;
            }

            double ratio = Math.Max(0, reducedCost[place] / pivot);
            double size = Math.Abs(pivot);
            bool tie = ratio <= leastRatio + TieTolerance;
            bool better =
                ratio < leastRatio - TieTolerance
                || (tie && (cautious ? nonbasic[place] < nonbasic[chosen] : size > largestPivot));
            if (better)
            {
                chosen = place;
                leastRatio = Math.Min(leastRatio, ratio);
                largestPivot = size;
            }
        }

        return chosen;
    }

    private double LeastRatio(int row, double direction)
    {
        double least = double.PositiveInfinity;
        var line = dictionary.AsSpan(row * columns, columns);
        for (int place = 0; place < columns; place++)
        {
            double pivot = direction * line[place];
            if (CanHelp(place, pivot))
            {
                least = Math.Min(least, Math.Max(0, reducedCost[place] / pivot));
            }
        }

        return least;
    }

    /// <summary>Whether moving this variable off its limit moves the row the wanted way.</summary>
    private bool CanHelp(int place, double pivot)
    {
        int variable = nonbasic[place];
        return low[variable] < high[variable] && (atHigh[place] ? pivot < -PivotTolerance : pivot > PivotTolerance);
    }

    private void Pivot(int row, int place, bool belowLow)
    {
        int leaving = basic[row],
            entering = nonbasic[place];
        var line = dictionary.AsSpan(row * columns, columns);
        double pivot = line[place];
        double target = belowLow ? low[leaving] : high[leaving];
        double step = (target - basicValue[row]) / pivot;
        double enteringValue = Resting(place) + step;
        Shift(place, step);
        basicValue[row] = enteringValue;

        line[place] = -1;
        Scale(line, -1 / pivot);
        for (int other = 0; other < rows; other++)
        {
            if (other != row)
            {
                Substitute(dictionary.AsSpan(other * columns, columns), line, place);
            }
        }

        Substitute(reducedCost, line, place);
        basic[row] = entering;
        nonbasic[place] = leaving;
        atHigh[place] = !belowLow;
    }

    private static void Substitute(Span<double> target, ReadOnlySpan<double> line, int place)
    {
        double factor = target[place];
        if (factor != 0)
        {
            target[place] = 0;
            AddMultiple(target, line, factor);
        }
    }
}
