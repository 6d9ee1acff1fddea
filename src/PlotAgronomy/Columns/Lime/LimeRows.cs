using System.Runtime.Intrinsics;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Columns;

/// <summary>The loop over the rows of a lime column.</summary>
internal abstract class LimeRows
{
    /// <summary>The loop for a method to a target, compiled for the method's own kernel.</summary>
    internal static LimeRows For(LimeMethod method, double targetPh, LimeRowChecks checks, SoilTexture? texture) =>
        method.Formula.GiveKernel(new Maker(checks), targetPh, texture);

    /// <summary>Answers rows of spans that were checked.</summary>
    internal abstract void Fill(
        ReadOnlySpan<double> waterPh,
        ReadOnlySpan<double> reading,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> flags
    );

    private sealed class Maker(LimeRowChecks checks) : ILimeKernelUser<LimeRows>
    {
        public LimeRows Use<TKernel>(TKernel kernel)
            where TKernel : struct, ILimeKernel =>
            kernel is TableLimeKernel table ? Rows(table) : Rows(new LimeOneByOne<TKernel>(kernel));

        private LimeRows Rows<TSum>(TSum sum)
            where TSum : struct, ILimeSum =>
            Vector512.IsHardwareAccelerated
                ? new LimeRowsBy<TSum, EightLanes>(sum, checks)
                : new LimeRowsBy<TSum, FourLanes>(sum, checks);
    }
}
