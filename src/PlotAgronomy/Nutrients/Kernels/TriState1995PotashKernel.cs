using System.Runtime.Intrinsics;

namespace PlotAgronomy.Nutrients;

/// <summary>Tri-State 1995: levels and pounds a ppm grow with the exchange capacity, and a year has a cap on alfalfa.</summary>
internal readonly struct TriState1995PotashKernel : IBuildUpKernel
{
    internal required double LevelBase { get; init; }

    internal required double LevelPerCapacity { get; init; }

    internal required double MaintenanceWidth { get; init; }

    internal required double DrawdownEnd { get; init; }

    internal required double FactorBase { get; init; }

    internal required double FactorPerCapacity { get; init; }

    internal required double Removed { get; init; }

    internal required double Extra { get; init; }

    public required double Cap { get; init; }

    public bool ReadsCapacity => true;

    public NeedRemarks Raises => double.IsFinite(Cap) ? NeedRemarks.YearlyCap : NeedRemarks.None;

    internal double Critical(double capacity) => SystemMath.ByExchangeCapacity(LevelBase, LevelPerCapacity, capacity);

    internal double TaperStart(double capacity) => Critical(capacity) + MaintenanceWidth;

    internal double TaperEnd(double capacity) => Critical(capacity) + DrawdownEnd;

    internal double ShareDue(double test, double capacity) =>
        SystemMath.TaperShare(test, TaperStart(capacity), TaperEnd(capacity));

    public double BuildUp(double test, double capacity) =>
        SystemMath.TriStatePotashBuildUp(test, Critical(capacity), FactorBase, FactorPerCapacity, capacity);

    public double Replaced(double test, double capacity) =>
        SystemMath.TriState1995Replacement(Removed, Extra, ShareDue(test, capacity));

    public double Rate(double test, double capacity) =>
        SystemMath.YearlyRate(BuildUp(test, capacity), Replaced(test, capacity), Cap);

    public Vector256<double> Rates(Vector256<double> test, Vector256<double> capacity) =>
        OneByOne.Rates(this, test, capacity);

    public double Low(double test, double rate) => rate;

    public double High(double test, double rate) => rate;

    public NeedRemarks Remarks(double test, double capacity, double rate) =>
        rate < BuildUp(test, capacity) + Replaced(test, capacity) ? NeedRemarks.YearlyCap : NeedRemarks.None;
}
