using System.Runtime.Intrinsics;

namespace PlotAgronomy.Nutrients;

/// <summary>Missouri: build-up by the square root of the test to a target that may grow with the exchange capacity, and what
/// leaves.</summary>
internal readonly struct MissouriNeedKernel : IBuildUpKernel
{
    internal required double TargetBase { get; init; }

    /// <summary>0 where the target does not go by the capacity.</summary>
    internal required double TargetPerCapacity { get; init; }

    internal required double Factor { get; init; }

    internal required double Years { get; init; }

    internal required double Removed { get; init; }

    /// <summary>Whether the crop is carried off.</summary>
    internal required bool Replaces { get; init; }

    public bool ReadsCapacity => TargetPerCapacity != 0;

    public double Cap => double.PositiveInfinity;

    public NeedRemarks Raises => Replaces ? NeedRemarks.NoUpperLimit : NeedRemarks.None;

    internal double Target(double capacity) => SystemMath.ByExchangeCapacity(TargetBase, TargetPerCapacity, capacity);

    internal bool Builds(double test, double capacity) => test < Target(capacity);

    public double BuildUp(double test, double capacity) =>
        SystemMath.SquareRootBuildUp(test, Target(capacity), Factor, Years);

    public double Replaced(double test, double capacity) => Removed;

    public double Rate(double test, double capacity) => SystemMath.YearlyRate(BuildUp(test, capacity), Removed, Cap);

    public Vector256<double> Rates(Vector256<double> test, Vector256<double> capacity) =>
        OneByOne.Rates(this, test, capacity);

    public double Low(double test, double rate) => rate;

    public double High(double test, double rate) => rate;

    public NeedRemarks Remarks(double test, double capacity, double rate) =>
        Replaces && !Builds(test, capacity) ? NeedRemarks.NoUpperLimit : NeedRemarks.None;
}
