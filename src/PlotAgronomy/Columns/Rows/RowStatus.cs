namespace PlotAgronomy.Columns;

/// <summary>How far a row of a column was answered. The flags beside it say why (<see cref="RowFindings"/>).</summary>
public enum RowStatus : byte
{
    /// <summary>The answer is a number.</summary>
    Answered,

    /// <summary>Nothing is to be done, and that is known: the answer is 0.</summary>
    NoneNeeded,

    /// <summary>The source does not cover the row: the answer is NaN.</summary>
    OutsideDomain,

    /// <summary>A value that the sum needs is NaN in the row: so is the answer.</summary>
    Missing,

    /// <summary>A value cannot be, or two of the row contradict each other: the answer is NaN.</summary>
    Implausible,
}
