using System.Numerics;

namespace PlotAgronomy.Fertilizers;

/// <summary>Dense dual simplex over bounded variables, kept as a dictionary so that a changed limit restarts warm.</summary>
/// <remarks>Variables are the columns (0 to Columns - 1) and the row activities (Columns onwards). The dictionary writes
/// each basic variable as a sum over the nonbasic ones, which rest on one of their limits. Resting every column on the limit
/// its cost asks for is dual feasible, so no first phase is needed.</remarks>
internal sealed partial class DualSimplex
{
    internal const double FeasibilityTolerance = 1e-9;
    private const double PivotTolerance = 1e-9;
    private const double TieTolerance = 1e-12;

    private readonly int rows;
    private readonly int columns;
    private readonly double[] rowScale;
    private readonly double[] dictionary;
    private readonly double[] reducedCost;
    private readonly double[] basicValue;
    private readonly double[] low;
    private readonly double[] high;
    private readonly int[] basic;
    private readonly int[] nonbasic;
    private readonly bool[] atHigh;

    internal DualSimplex(LinearProgram program)
        : this(program.Rows, program.Columns)
    {
        program.ColumnLow.CopyTo(low, 0);
        program.ColumnHigh.CopyTo(high, 0);
        program.Cost.CopyTo(reducedCost, 0);
        for (int row = 0; row < rows; row++)
        {
            double scale = rowScale[row] = ScaleOf(program, row);
            var scaled = dictionary.AsSpan(row * columns, columns);
            program.Row(row).CopyTo(scaled);
            Scale(scaled, scale);
            low[columns + row] = program.RowLow[row] * scale;
            high[columns + row] = program.RowHigh[row] * scale;
            basic[row] = columns + row;
        }

        for (int column = 0; column < columns; column++)
        {
            nonbasic[column] = column;
        }

        Rest();
    }

    private DualSimplex(int rows, int columns)
    {
        this.rows = rows;
        this.columns = columns;
        rowScale = new double[rows];
        dictionary = new double[rows * columns];
        reducedCost = new double[columns];
        basicValue = new double[rows];
        low = new double[rows + columns];
        high = new double[rows + columns];
        basic = new int[rows];
        nonbasic = new int[columns];
        atHigh = new bool[columns];
    }

    internal DualSimplex Copy()
    {
        var copy = new DualSimplex(rows, columns);
        copy.CopyFrom(this);
        return copy;
    }

    internal void CopyFrom(DualSimplex other)
    {
        other.rowScale.CopyTo(rowScale, 0);
        other.dictionary.CopyTo(dictionary, 0);
        other.reducedCost.CopyTo(reducedCost, 0);
        other.basicValue.CopyTo(basicValue, 0);
        other.low.CopyTo(low, 0);
        other.high.CopyTo(high, 0);
        other.basic.CopyTo(basic, 0);
        other.nonbasic.CopyTo(nonbasic, 0);
        other.atHigh.CopyTo(atHigh, 0);
    }

    /// <summary>Numbers held, all of which a pivot moves.</summary>
    internal long Size => (long)(rows + 1) * columns;

    internal double Low(int column) => low[column];

    internal double High(int column) => high[column];

    /// <summary>Changes the limits of a column; the next <see cref="Solve"/> starts from the present basis.</summary>
    internal void Limit(int column, double newLow, double newHigh)
    {
        int place = Array.IndexOf(nonbasic, column);
        double before = place < 0 ? 0 : Resting(place);
        low[column] = newLow;
        high[column] = newHigh;
        if (place < 0)
        {
            return;
        }

        atHigh[place] = reducedCost[place] < 0 && double.IsFinite(newHigh);
        Shift(place, Resting(place) - before);
    }

    /// <summary>Sum of cost x column at the present basis: a lower bound of the optimum at any time.</summary>
    internal double Objective()
    {
        double sum = 0;
        for (int place = 0; place < columns; place++)
        {
            double cost = reducedCost[place];
            sum += cost == 0 ? 0 : cost * Resting(place);
        }

        return sum;
    }

    /// <summary>Writes the values of the first columns.</summary>
    internal void Columns(Span<double> values)
    {
        for (int place = 0; place < columns; place++)
        {
            if (nonbasic[place] < values.Length)
            {
                values[nonbasic[place]] = Resting(place);
            }
        }

        for (int row = 0; row < rows; row++)
        {
            if (basic[row] < values.Length)
            {
                values[basic[row]] = basicValue[row];
            }
        }
    }

    /// <summary>Writes the reduced cost of the first columns; zero for a basic one.</summary>
    internal void ReducedCosts(Span<double> values)
    {
        values.Clear();
        for (int place = 0; place < columns; place++)
        {
            if (nonbasic[place] < values.Length)
            {
                values[nonbasic[place]] = reducedCost[place];
            }
        }
    }

    /// <summary>Writes the price of each row: how much the optimum rises when the row's binding limit rises by one.</summary>
    internal void RowPrices(Span<double> values)
    {
        values.Clear();
        for (int place = 0; place < columns; place++)
        {
            if (nonbasic[place] >= columns)
            {
                values[nonbasic[place] - columns] = reducedCost[place] * rowScale[nonbasic[place] - columns];
            }
        }
    }

    /// <summary>Rests every nonbasic variable on the limit its reduced cost asks for and works out the basic ones.</summary>
    private void Rest()
    {
        for (int place = 0; place < columns; place++)
        {
            atHigh[place] = reducedCost[place] < 0;
            if (!double.IsFinite(Resting(place)))
            {
                throw new InvalidOperationException("A column of negative cost needs a finite upper limit.");
            }
        }

        for (int row = 0; row < rows; row++)
        {
            double sum = 0;
            for (int place = 0; place < columns; place++)
            {
                sum += dictionary[(row * columns) + place] * Resting(place);
            }

            basicValue[row] = sum;
        }
    }

    private double Resting(int place) => atHigh[place] ? high[nonbasic[place]] : low[nonbasic[place]];

    private void Shift(int place, double step)
    {
        if (step == 0)
        {
            return;
        }

        for (int row = 0; row < rows; row++)
        {
            basicValue[row] += dictionary[(row * columns) + place] * step;
        }
    }

    /// <summary>Rows are measured in their own limit, so that one tolerance suits pounds of lime and ounces of boron.</summary>
    private static double ScaleOf(LinearProgram program, int row)
    {
        double size = 0;
        foreach (double limit in (ReadOnlySpan<double>)[program.RowLow[row], program.RowHigh[row]])
        {
            size = double.IsFinite(limit) ? Math.Max(size, Math.Abs(limit)) : size;
        }

        if (size == 0)
        {
            foreach (double coefficient in program.Row(row))
            {
                size = Math.Max(size, Math.Abs(coefficient));
            }
        }

        return size > 0 ? 1 / size : 1;
    }

    private static void Scale(Span<double> values, double factor)
    {
        foreach (ref double value in values)
        {
            value *= factor;
        }
    }

    /// <summary>target += factor x source, in vectors.</summary>
    private static void AddMultiple(Span<double> target, ReadOnlySpan<double> source, double factor)
    {
        int done = 0;
        var factors = new Vector<double>(factor);
        for (; done <= target.Length - Vector<double>.Count; done += Vector<double>.Count)
        {
            var sum = new Vector<double>(target[done..]) + (factors * new Vector<double>(source[done..]));
            sum.CopyTo(target[done..]);
        }

        for (; done < target.Length; done++)
        {
            target[done] += factor * source[done];
        }
    }
}
