using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>One column of a printed table: rates in lb/ac by reading, rising.</summary>
internal sealed class LimeTableColumn
{
    private readonly double[] readings;
    private readonly double[] rates;
    private readonly bool[] marked;

    /// <summary>The row to begin looking at, for readings in even steps no wider than the narrowest between two rows.</summary>
    private readonly int[] startAt;
    private readonly double stepsPerUnit;

    /// <param name="rows">Reading, rate and whether the cell has a finding of its own, rising by reading.</param>
    internal LimeTableColumn(ReadOnlySpan<(double Reading, double Rate, bool IsMarked)> rows)
    {
        readings = new double[rows.Length];
        rates = new double[rows.Length];
        marked = new bool[rows.Length];
        double narrowest = double.PositiveInfinity;
        for (int i = 0; i < rows.Length; i++)
        {
            (readings[i], rates[i], marked[i]) = rows[i];
            narrowest = i == 0 ? narrowest : Math.Min(narrowest, readings[i] - readings[i - 1]);
        }

        stepsPerUnit = rows.Length > 1 ? 1 / narrowest : 0;
        startAt = new int[StepOf(readings[^1]) + 1];
        for (int step = 0, row = 0; step < startAt.Length; step++)
        {
            while (StepOf(readings[row]) < step)
            {
                row++;
            }

            startAt[step] = Math.Max(0, row - 1);
        }
    }

    /// <summary>The row at a reading twice, else the rows below and above it; -1 twice beyond the first and the last.</summary>
    internal (int Below, int Above) Around(double reading)
    {
        int above = AtOrAbove(reading);
        return above == readings.Length ? (-1, -1)
            : IsOn(above, reading) ? (above, above)
            : above == 0 ? (-1, -1)
            : (above - 1, above);
    }

    /// <summary>lb/ac, on a straight line between two rows; NaN beyond the first and the last.</summary>
    internal double PoundsPerAcre(double reading, out LimeRemarks remarks)
    {
        var (below, above) = Around(reading);
        remarks = LimeRemarks.None;
        if (above < 0)
        {
            return double.NaN;
        }

        remarks =
            (below == above ? LimeRemarks.None : LimeRemarks.Interpolated)
            | (marked[below] || marked[above] ? LimeRemarks.CellMarked : LimeRemarks.None);
        return below == above
            ? rates[above]
            : Interpolation.Line(readings[below], rates[below], readings[above], rates[above], reading);
    }

    /// <summary>The first row that is not below a reading; the number of rows where all are.</summary>
    private int AtOrAbove(double reading)
    {
        double least = Tolerance.LowEdge(reading);
        int step = StepOf(reading);
        int row = step <= 0 ? 0 : startAt[Math.Min(step, startAt.Length - 1)];
        while (row < readings.Length && readings[row] < least)
        {
            row++;
        }

        return row;
    }

    private bool IsOn(int row, double reading) => Tolerance.AreEqual(readings[row], reading);

    private int StepOf(double reading) => (int)((reading - readings[0]) * stepsPerUnit);
}
