using System.Runtime.Intrinsics;

namespace PlotAgronomy.Nutrients;

/// <summary>An equation of test and yield, none above its limit, never below its least rate.</summary>
internal readonly struct LinearNeedKernel : INeedKernel
{
    internal required double Constant { get; init; }

    internal required double PerYield { get; init; }

    internal required double PerTest { get; init; }

    internal required double PerBoth { get; init; }

    internal required double LeastRate { get; init; }

    internal required double ZeroAbove { get; init; }

    internal required double Yield { get; init; }

    public bool ReadsCapacity => false;

    public NeedRemarks Raises => NeedRemarks.None;

    public double Rate(double test, double capacity) =>
        Step.UpTo(
            test,
            ZeroAbove,
            SystemMath.LinearAdvice(LeastRate, Constant, PerYield, PerTest, PerBoth, Yield, test)
        );

    public Vector256<double> Rates(Vector256<double> test, Vector256<double> capacity) =>
        OneByOne.Rates(this, test, capacity);

    public double Low(double test, double rate) => rate;

    public double High(double test, double rate) => rate;

    public NeedRemarks Remarks(double test, double capacity, double rate) => NeedRemarks.None;
}
