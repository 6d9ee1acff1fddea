using PlotAgronomy.Columns;

namespace PlotAgronomy.Tests.Columns;

/// <summary>One call of a column over rows from one place to another, and what it wrote.</summary>
internal sealed class ColumnRun(int rows)
{
    internal double[] Values { get; } = new double[rows];

    internal RowStatus[] Status { get; } = new RowStatus[rows];

    internal ulong[] Flags { get; } = new ulong[rows];

    internal static ColumnRun Of(int rows, Answer answer)
    {
        var run = new ColumnRun(rows);
        answer(0, rows, run.Values, run.Status, run.Flags);
        return run;
    }

    internal void AssertSame(ColumnRun other)
    {
        Assert.Equal(Values.Select(BitConverter.DoubleToInt64Bits), other.Values.Select(BitConverter.DoubleToInt64Bits));
        Assert.Equal(Status, other.Status);
        Assert.Equal(Flags, other.Flags);
    }

    internal delegate void Answer(int from, int rows, Span<double> values, Span<RowStatus> status, Span<ulong> flags);
}
