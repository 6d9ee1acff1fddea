using PlotAgronomy.Columns;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>Room for what a column answers.</summary>
internal sealed class AnswerColumns(int rows)
{
    internal double[] Numbers { get; } = new double[rows];

    internal RowStatus[] Status { get; } = new RowStatus[rows];

    internal ulong[] Flags { get; } = new ulong[rows];
}
