using PlotAgronomy.Reference;

namespace PlotAgronomy.Columns;

/// <summary>The sum of a column whose rows are nearly all answered: several rows at once, and those that something speaks against
/// one by one.</summary>
internal interface IRowSum
{
    /// <summary>The sums of as many rows as there are lanes.</summary>
    /// <param name="row">The first of them.</param>
    /// <param name="holds">Takes a mask of the rows that are answered by it.</param>
    /// <param name="flags">Takes what is to be looked at in these.</param>
    T Several<T>(int row, out T holds, out T flags)
        where T : unmanaged, ILanes<T>;

    /// <summary>The answer of one row, whatever it holds.</summary>
    (double Answer, RowStatus Status, ulong Flags) One(int row);
}
