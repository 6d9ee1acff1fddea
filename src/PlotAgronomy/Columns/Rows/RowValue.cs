namespace PlotAgronomy.Columns;

/// <summary>What is asked of any value of a row.</summary>
internal static class RowValue
{
    /// <summary>Whether a value cannot be. One that is not known is not outside.</summary>
    internal static bool IsOutside(double value, double least, double most) => value < least | value > most;

    /// <summary>An amount that was worked out; refused where no number holds it.</summary>
    internal static (double Amount, RowStatus Status, ulong Flags) Answer(double amount, ulong flags, ulong impossible) =>
        amount <= double.MaxValue ? (amount, RowStatus.Answered, flags) : (double.NaN, RowStatus.Implausible, impossible);
}
