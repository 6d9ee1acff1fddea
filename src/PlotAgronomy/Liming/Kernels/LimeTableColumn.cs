using System.Runtime.CompilerServices;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>One column of a printed table: rates in lb/ac by reading, rising.</summary>
/// <remarks>A row is found by a step of the reading, not by a search: steps are so narrow that none holds two rows. Many readings
/// are looked up at once, without a branch.</remarks>
internal sealed class LimeTableColumn
{
    /// <summary>So much narrower than the least distance of two rows is a step, lest dust put both into one.</summary>
    private const double Narrower = 1 + 1e-6;

    private const int BitsOfMark = 32;
    private const ulong MarkOfRow = (1UL << BitsOfMark) - 1;

    private readonly int rows;

    /// <summary>Readings of the rows, and one that no reading reaches.</summary>
    private readonly double[] readings;

    private readonly double stepsPerUnit;
    private readonly double lastStep = int.MaxValue;

    /// <summary>By step: the number of rows below it, and the reading of the row in it or after it.</summary>
    private readonly (LookUp RowsBelow, LookUp Reading) ofStep;

    /// <summary>By row: its reading and rate, and by how much the rate rises with the reading up to it.</summary>
    private readonly (LookUp Reading, LookUp Rate, LookUp Slope) ofRow;

    /// <summary>By row, what is noticed on it and, as many bits higher, between it and the row below.</summary>
    private readonly LookUp marks;

    /// <param name="cells">Reading, rate and whether the cell has a finding of its own, rising by reading.</param>
    internal LimeTableColumn(ReadOnlySpan<(double Reading, double Rate, bool IsMarked)> cells)
    {
        rows = cells.Length;
        readings = new double[rows + 1];
        double[] rates = new double[rows + 1];
        double[] slopes = new double[rows + 1];
        double[] noticed = new double[rows + 1];
        (readings[rows], rates[rows], slopes[0]) = (double.PositiveInfinity, double.NaN, double.NaN);
        double narrowest = double.PositiveInfinity;
        for (int row = 0; row < rows; row++)
        {
            (readings[row], rates[row], bool isMarked) = cells[row];
            var (on, between) = (Mark(isMarked), LimeRemarks.None);
            if (row > 0)
            {
                var (reading, rate, isBelowMarked) = cells[row - 1];
                slopes[row] = (rates[row] - rate) / (readings[row] - reading);
                between = LimeRemarks.Interpolated | Mark(isBelowMarked) | on;
                narrowest = Math.Min(narrowest, readings[row] - reading);
            }

            noticed[row] = BitConverter.UInt64BitsToDouble((ulong)on | ((ulong)between << BitsOfMark));
        }

        ofRow = (new(readings), new(rates), new(slopes));
        marks = new(noticed);
        stepsPerUnit = Narrower / narrowest;
        double[] rowsBelow = new double[StepOf(readings[rows - 1]) + 1];
        lastStep = rowsBelow.Length - 1;
        double[] ahead = new double[rowsBelow.Length];
        for (int step = 0, row = 0; step < rowsBelow.Length; step++)
        {
            row += StepOf(readings[row]) < step ? 1 : 0;
            (rowsBelow[step], ahead[step]) = (BitConverter.Int64BitsToDouble(row), readings[row]);
        }

        ofStep = (new(rowsBelow), new(ahead));

        static LimeRemarks Mark(bool isMarked) => isMarked ? LimeRemarks.CellMarked : LimeRemarks.None;
    }

    /// <summary>The row at a reading twice, else the rows below and above it; -1 twice beyond the first and the last.</summary>
    internal (int Below, int Above) Around(double reading)
    {
        int above = 0;
        while (Tolerance.IsBelow(readings[above], reading))
        {
            above++;
        }

        return readings[above] <= Tolerance.HighEdge(reading) ? (above, above)
            : above == 0 || above == rows ? (-1, -1)
            : (above - 1, above);
    }

    /// <summary>lb/ac, on a straight line between two rows; NaN beyond the first and the last.</summary>
    internal double PoundsPerAcre(double reading, out LimeRemarks remarks)
    {
        double pounds = PoundsPerAcre(OneLane.Of(reading), out var noticed).Value;
        remarks = (LimeRemarks)noticed.Bits;
        return pounds;
    }

    /// <summary>The same of many readings.</summary>
    /// <remarks>Beyond the first row no slope is known, beyond the last no rate: both give NaN without a branch.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T PoundsPerAcre<T>(T reading, out T remarks)
        where T : unmanaged, ILanes<T>
    {
        var (low, high) = LaneTolerance.Edges(reading);
        var step = StepOf(low);
        var row = T.Next(T.LookUp(ofStep.RowsBelow, step), T.LookUp(ofStep.Reading, step) < low);
        var itsReading = T.LookUp(ofRow.Reading, row);
        var (itsRate, slope) = (T.LookUp(ofRow.Rate, row), T.LookUp(ofRow.Slope, row));
        var isOn = itsReading <= high;
        var noticed = T.LookUp(marks, row);
        remarks = T.When(isOn, noticed, noticed >>> BitsOfMark) & T.OfBits(MarkOfRow);
        return T.When(isOn, itsRate, itsRate + ((reading - itsReading) * slope));
    }

    private int StepOf(double reading) => (int)StepOf(OneLane.Of(reading)).Bits;

    /// <summary>The first for a reading that is not known.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private T StepOf<T>(T reading)
        where T : unmanaged, ILanes<T>
    {
        var steps = (reading - T.Of(readings[0])) * T.Of(stepsPerUnit);
        steps &= steps > T.Of(0);
        return T.Places(T.Least(steps, T.Of(lastStep)));
    }
}
