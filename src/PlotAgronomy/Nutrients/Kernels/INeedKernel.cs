using System.Runtime.Intrinsics;

namespace PlotAgronomy.Nutrients;

/// <summary>The sum of one system for one nutrient, crop and test, from doubles to doubles, all in lb/ac. The answer for one soil
/// and a column of rows both call it.</summary>
/// <remarks>Kernels are structs, so that a loop over rows is compiled for each of them. What is checked at the edge is not
/// checked again: test and capacity are finite and at least 0.</remarks>
internal interface INeedKernel
{
    /// <summary>Whether the sum goes by the exchange capacity.</summary>
    bool ReadsCapacity { get; }

    /// <summary>What it may notice on its way.</summary>
    NeedRemarks Raises { get; }

    /// <summary>The unrounded rate; NaN where the system prints none.</summary>
    double Rate(double test, double capacity);

    /// <summary>The rates of four rows at once, bit for bit those of <see cref="Rate"/>.</summary>
    Vector256<double> Rates(Vector256<double> test, Vector256<double> capacity);

    /// <summary>The lower end of the advice, for a rate that is not NaN.</summary>
    double Low(double test, double rate);

    /// <summary>The upper end of the advice, for a rate that is not NaN.</summary>
    double High(double test, double rate);

    /// <summary>What was noticed on the way to a rate.</summary>
    NeedRemarks Remarks(double test, double capacity, double rate);
}
