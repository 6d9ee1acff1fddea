using System.Runtime.Intrinsics;

namespace PlotAgronomy.Nutrients;

/// <summary>A parabola of the index, held at zero from its first zero on; the advice is the rate give or take a range.</summary>
internal readonly struct CurveNeedKernel : INeedKernel
{
    internal required double A { get; init; }

    internal required double B { get; init; }

    internal required double C { get; init; }

    internal required double FirstZero { get; init; }

    internal required double ZeroAboveIndex { get; init; }

    internal required double Range { get; init; }

    public bool ReadsCapacity => false;

    public NeedRemarks Raises => NeedRemarks.CurveTurnsUp;

    /// <summary>What the curve gives beyond its end too.</summary>
    internal double Raw(double index) => SystemMath.Parabola(index, A, B, C);

    public double Rate(double test, double capacity) => Rates(Vector256.Create(test), default).ToScalar();

    public Vector256<double> Rates(Vector256<double> test, Vector256<double> capacity) =>
        SystemMath.FallingParabola(
            test,
            Vector256.Create(A),
            Vector256.Create(B),
            Vector256.Create(C),
            Vector256.Create(FirstZero),
            Vector256.Create(ZeroAboveIndex)
        );

    public double Low(double test, double rate) => Math.Max(0, rate - Range);

    public double High(double test, double rate) => rate == 0 ? 0 : rate + Range;

    public NeedRemarks Remarks(double test, double capacity, double rate) =>
        rate == 0 && Raw(test) > 0 ? NeedRemarks.CurveTurnsUp : NeedRemarks.None;
}
