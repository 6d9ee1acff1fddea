using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>One column of a printed table: rates in lb/ac by reading, rising.</summary>
/// <remarks>A row is found by a step of the reading, not by a search: steps are so narrow that none holds two rows. Four readings
/// are looked up at once, without a branch; one is looked up as four alike.</remarks>
internal sealed class LimeTableColumn
{
    /// <summary>Numbers kept side by side for a step or a row, loaded at once.</summary>
    private const int Side = 4;

    private readonly int rows;

    /// <summary>Readings of the rows, and one that no reading reaches.</summary>
    private readonly double[] readings;

    /// <summary>By step: the last row that may lie below all readings in it, as the bits of a number, its reading and that of the
    /// next row.</summary>
    private readonly double[] steps;

    /// <summary>By row: reading and rate of the row below it, and its own.</summary>
    private readonly double[] lines;

    /// <summary>By row, what is noticed on it, and between it and the row below, as the bits of a number.</summary>
    private readonly double[] marks;
    private readonly double stepsPerUnit;
    private readonly double lastStep;

    /// <param name="cells">Reading, rate and whether the cell has a finding of its own, rising by reading.</param>
    internal LimeTableColumn(ReadOnlySpan<(double Reading, double Rate, bool IsMarked)> cells)
    {
        rows = cells.Length;
        readings = new double[rows + 1];
        lines = new double[Side * (rows + 1)];
        marks = new double[Side * (rows + 1)];
        double narrowest = double.PositiveInfinity;
        for (int row = 0; row <= rows; row++)
        {
            var (reading, rate, isMarked) = row < rows ? cells[row] : (double.PositiveInfinity, double.NaN, false);
            var below = row == 0 ? (reading, rate, isMarked) : cells[row - 1];
            readings[row] = reading;
            new[] { below.Item1, below.Item2, reading, rate }.CopyTo(lines, Side * row);
            ulong on = Mark(isMarked);
            ulong between = row > 0 && row < rows ? (ulong)LimeRemarks.Interpolated | Mark(below.Item3) | on : 0;
            new[] { BitConverter.UInt64BitsToDouble(on), BitConverter.UInt64BitsToDouble(between) }.CopyTo(marks, Side * row);
            narrowest = row > 0 ? Math.Min(narrowest, reading - below.Item1) : narrowest;
        }

        stepsPerUnit = 2 / narrowest;
        lastStep = StepOf(readings[rows - 1]);
        steps = new double[Side * ((int)lastStep + 1)];
        for (int step = 0, row = 0; step <= lastStep; step++)
        {
            row += StepOf(readings[row]) < step ? 1 : 0;
            int before = Math.Max(0, row - 1);
            new[] { BitConverter.Int64BitsToDouble(before), readings[before], readings[before + 1] }.CopyTo(steps, Side * step);
        }

        static ulong Mark(bool isMarked) => (ulong)(isMarked ? LimeRemarks.CellMarked : LimeRemarks.None);
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
        double pounds = PoundsPerAcre(Vector256.Create(reading), out var noticed).ToScalar();
        remarks = (LimeRemarks)noticed.ToScalar();
        return pounds;
    }

    /// <summary>The same of four readings.</summary>
    /// <remarks>Beyond the first row the line has no length, beyond the last no end: both give NaN without a branch.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Vector256<double> PoundsPerAcre(Vector256<double> reading, out Vector256<ulong> remarks)
    {
        var (low, high) = Tolerance.Edges(reading);
        var at = Vector256.Create(readings[0]);
        var step = (reading - at) * Vector256.Create(stepsPerUnit);
        step = Vector256.MinNative(Vector256.MaxNative(step, Vector256<double>.Zero), Vector256.Create(lastStep));
        step &= Vector256.Equals(reading, reading);
        var (before, itsReading, nextReading, _) = FourByFour.Load(steps, Vector256.ConvertToInt64Native(step));
        var above = before.AsInt64() - Vector256.LessThan(itsReading, low).AsInt64();
        above -= Vector256.LessThan(nextReading, low).AsInt64();
        var (fromReading, fromRate, toReading, toRate) = FourByFour.Load(lines, above);
        var isOn = Vector256.LessThanOrEqual(toReading, high);
        var (on, between, _, _) = FourByFour.Load(marks, above);
        remarks = Vector256.ConditionalSelect(isOn, on, between).AsUInt64();
        return Vector256.ConditionalSelect(
            isOn,
            toRate,
            Interpolation.Line(fromReading, fromRate, toReading, toRate, reading)
        );
    }

    private int StepOf(double reading) => (int)((reading - readings[0]) * stepsPerUnit);
}
