using System.Runtime.CompilerServices;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>One column of a printed table: rates in lb/ac by reading, rising.</summary>
/// <remarks>A row is found by a step of the reading, not by a search: steps are so narrow that none holds two rows.</remarks>
internal sealed class LimeTableColumn
{
    private readonly int rows;

    /// <summary>Readings of the rows, and two that no reading reaches.</summary>
    private readonly double[] readings;
    private readonly double[] rates;
    private readonly LimeRemarks[] marks;

    /// <summary>What is noticed between a row and the one below it.</summary>
    private readonly LimeRemarks[] marksBetween;

    /// <summary>By step, the last row that may lie below all readings in it.</summary>
    private readonly int[] rowBefore;
    private readonly double stepsPerUnit;

    /// <param name="cells">Reading, rate and whether the cell has a finding of its own, rising by reading.</param>
    internal LimeTableColumn(ReadOnlySpan<(double Reading, double Rate, bool IsMarked)> cells)
    {
        rows = cells.Length;
        readings = new double[rows + 2];
        rates = new double[rows + 2];
        marks = new LimeRemarks[rows + 2];
        marksBetween = new LimeRemarks[rows + 2];
        readings.AsSpan(rows).Fill(double.PositiveInfinity);
        rates.AsSpan(rows).Fill(double.NaN);
        double narrowest = double.PositiveInfinity;
        for (int row = 0; row < rows; row++)
        {
            readings[row] = cells[row].Reading;
            rates[row] = cells[row].Rate;
            marks[row] = cells[row].IsMarked ? LimeRemarks.CellMarked : LimeRemarks.None;
            if (row > 0)
            {
                narrowest = Math.Min(narrowest, readings[row] - readings[row - 1]);
                marksBetween[row] = LimeRemarks.Interpolated | marks[row - 1] | marks[row];
            }
        }

        stepsPerUnit = 2 / narrowest;
        rowBefore = new int[StepOf(readings[rows - 1]) + 1];
        for (int step = 0, row = 0; step < rowBefore.Length; step++)
        {
            row += StepOf(readings[row]) < step ? 1 : 0;
            rowBefore[step] = Math.Max(0, row - 1);
        }
    }

    /// <summary>The row at a reading twice, else the rows below and above it; -1 twice beyond the first and the last.</summary>
    internal (int Below, int Above) Around(double reading)
    {
        int above = AtOrAbove(reading);
        return IsOn(above, reading) ? (above, above)
            : above == 0 || above == rows ? (-1, -1)
            : (above - 1, above);
    }

    /// <summary>lb/ac, on a straight line between two rows; NaN beyond the first and the last.</summary>
    /// <remarks>Beyond the first row the line has no length, beyond the last no end: both give NaN without a branch.</remarks>
    internal double PoundsPerAcre(double reading, out LimeRemarks remarks)
    {
        int above = AtOrAbove(reading);
        int below = Math.Max(above - 1, 0);
        double between = Interpolation.Line(readings[below], rates[below], readings[above], rates[above], reading);
        if (IsOn(above, reading))
        {
            remarks = marks[above];
            return rates[above];
        }

        remarks = marksBetween[above];
        return between;
    }

    /// <summary>The first row that is not below a reading; the number of rows where all are.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int AtOrAbove(double reading)
    {
        double least = Tolerance.LowEdge(reading);
        int row = rowBefore[Math.Clamp(StepOf(reading), 0, rowBefore.Length - 1)];
        row += OneIfBelow(readings[row], least);
        row += OneIfBelow(readings[row], least);
        return row;
    }

    /// <summary>Whether the first row that is not below a reading is not above it either.</summary>
    private bool IsOn(int above, double reading) => readings[above] <= Tolerance.HighEdge(reading);

    /// <summary>1 for a smaller number, by the sign of the difference: in a loop over rows a comparison would branch.</summary>
    private static int OneIfBelow(double number, double limit) =>
        (int)(BitConverter.DoubleToUInt64Bits(number - limit) >> 63);

    private int StepOf(double reading) => (int)((reading - readings[0]) * stepsPerUnit);
}
