using System.Runtime.Intrinsics;

namespace PlotAgronomy.Nutrients;

/// <summary>A printed rate, or range of rates, for each class of a scale, and none where the scale ends.</summary>
internal readonly struct ClassNeedKernel : INeedKernel
{
    internal required ClassLimits Limits { get; init; }

    /// <summary>One for each class, the poorest first, and one beyond the last.</summary>
    internal required ClassNeed[] Needs { get; init; }

    public bool ReadsCapacity => false;

    public NeedRemarks Raises
    {
        get
        {
            var all = NeedRemarks.None;
            foreach (var need in Needs)
            {
                all |= need.Remarks;
            }

            return all;
        }
    }

    public double Rate(double test, double capacity) => Needs[Limits.IndexOf(test)].Low;

    public Vector256<double> Rates(Vector256<double> test, Vector256<double> capacity) =>
        OneByOne.Rates(this, test, capacity);

    public double Low(double test, double rate) => rate;

    public double High(double test, double rate) => Needs[Limits.IndexOf(test)].High;

    public NeedRemarks Remarks(double test, double capacity, double rate) => Needs[Limits.IndexOf(test)].Remarks;
}
