namespace PlotAgronomy.Liming;

/// <summary>The sum of one lime method to one target, from doubles to a double. The answer for one soil and a column of rows
/// both call it.</summary>
/// <remarks>Kernels are structs, so that a loop over rows is compiled for each of them. What is not known is NaN.</remarks>
internal interface ILimeKernel
{
    /// <summary>Unrounded lb/ac of the method's basis, below zero where the equation goes there; NaN where the table prints
    /// none.</summary>
    double PoundsPerAcre(double reading, double waterPh, out LimeRemarks remarks);

    /// <summary>Whether the sum may be worked out for any row without harm, also for one that is stopped.</summary>
    static abstract bool IsTotal { get; }
}
