using System.Runtime.Intrinsics;

namespace PlotAgronomy.Nutrients;

/// <summary>Tri-State 2020: build-up below the critical level, removal below the limit.</summary>
internal readonly struct TriState2020PhosphateKernel : IBuildUpKernel
{
    internal required double Critical { get; init; }

    internal required double Limit { get; init; }

    internal required double Factor { get; init; }

    internal required double Removed { get; init; }

    public bool ReadsCapacity => false;

    public double Cap => double.PositiveInfinity;

    public NeedRemarks Raises => NeedRemarks.None;

    public double BuildUp(double test, double capacity) => BuildUps(Vector256.Create(test)).ToScalar();

    public double Replaced(double test, double capacity) => Replacements(Vector256.Create(test)).ToScalar();

    public double Rate(double test, double capacity) => Rates(Vector256.Create(test), default).ToScalar();

    public Vector256<double> Rates(Vector256<double> test, Vector256<double> capacity) =>
        SystemMath.YearlyRate(BuildUps(test), Replacements(test), Vector256.Create(Cap));

    public double Low(double test, double rate) => rate;

    public double High(double test, double rate) => rate;

    public NeedRemarks Remarks(double test, double capacity, double rate) => NeedRemarks.None;

    private Vector256<double> BuildUps(Vector256<double> test) =>
        SystemMath.LinearBuildUp(test, Vector256.Create(Critical), Vector256.Create(Factor));

    private Vector256<double> Replacements(Vector256<double> test) =>
        SystemMath.TriState2020Replacement(test, Vector256.Create(Limit), Vector256.Create(Removed), Vector256<double>.Zero);
}
