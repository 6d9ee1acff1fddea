using System.Runtime.Intrinsics;

namespace PlotAgronomy.Nutrients;

/// <summary>Tri-State 1995: build-up below the critical level, removal as far as maintenance, then a taper to none.</summary>
internal readonly struct TriState1995PhosphateKernel : IBuildUpKernel
{
    internal required double Critical { get; init; }

    internal required double TaperStart { get; init; }

    internal required double TaperEnd { get; init; }

    internal required double Factor { get; init; }

    internal required double Removed { get; init; }

    public bool ReadsCapacity => false;

    public double Cap => double.PositiveInfinity;

    public NeedRemarks Raises => NeedRemarks.None;

    internal double ShareDue(double test) => SystemMath.TaperShare(test, TaperStart, TaperEnd);

    public double BuildUp(double test, double capacity) => SystemMath.LinearBuildUp(test, Critical, Factor);

    public double Replaced(double test, double capacity) => SystemMath.TriState1995Replacement(Removed, 0, ShareDue(test));

    public double Rate(double test, double capacity) => SystemMath.YearlyRate(BuildUp(test, 0), Replaced(test, 0), Cap);

    public Vector256<double> Rates(Vector256<double> test, Vector256<double> capacity) =>
        OneByOne.Rates(this, test, capacity);

    public double Low(double test, double rate) => rate;

    public double High(double test, double rate) => rate;

    public NeedRemarks Remarks(double test, double capacity, double rate) => NeedRemarks.None;
}
