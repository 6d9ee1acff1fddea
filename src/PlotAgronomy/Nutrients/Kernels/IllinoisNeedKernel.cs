using System.Runtime.Intrinsics;

namespace PlotAgronomy.Nutrients;

/// <summary>Illinois: fixed pounds for each pound of test below the goal, removal as far as the limit.</summary>
internal readonly struct IllinoisNeedKernel : IBuildUpKernel
{
    internal required double Goal { get; init; }

    internal required double Limit { get; init; }

    internal required double Factor { get; init; }

    internal required double Years { get; init; }

    internal required double Removed { get; init; }

    internal required double TimesRemoval { get; init; }

    public bool ReadsCapacity => false;

    public double Cap => double.PositiveInfinity;

    public NeedRemarks Raises => NeedRemarks.None;

    public double BuildUp(double test, double capacity) => SystemMath.IllinoisBuildUp(test, Goal, Factor, Years);

    public double Replaced(double test, double capacity) =>
        SystemMath.IllinoisReplacement(test, Limit, Removed, TimesRemoval);

    public double Rate(double test, double capacity) => SystemMath.YearlyRate(BuildUp(test, 0), Replaced(test, 0), Cap);

    public Vector256<double> Rates(Vector256<double> test, Vector256<double> capacity) =>
        OneByOne.Rates(this, test, capacity);

    public double Low(double test, double rate) => rate;

    public double High(double test, double rate) => rate;

    public NeedRemarks Remarks(double test, double capacity, double rate) => NeedRemarks.None;
}
