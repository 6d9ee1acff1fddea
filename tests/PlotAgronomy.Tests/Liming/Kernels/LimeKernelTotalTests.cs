using PlotAgronomy.Liming;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Liming;

/// <summary>A kernel that says its sum harms no row gives a number, or none, for whatever it is handed; one that says it may be
/// harmed is.</summary>
public class LimeKernelTotalTests
{
    private static readonly double[] Odd =
        [double.NaN, double.NegativeInfinity, double.PositiveInfinity, double.MinValue, double.MaxValue, -1, 0, 5.2, 40];

    public static TheoryData<string> Methods => [.. LimeMethod.Everything.Select(m => m.Id)];

    [Theory, MemberData(nameof(Methods))]
    public void A_kernel_is_harmed_by_odd_values_only_where_it_says_so(string id)
    {
        var formula = LimeMethod.Find(id).Formula;
        double[] targets = formula.Targets.IsEmpty ? [6, 6.5] : [.. formula.Targets];
        var trials = targets.Select(target => formula.GiveKernel(new Trial(), target, SoilTexture.Loam)).ToList();
        Assert.All(trials, t => Assert.Equal(trials[0].IsTotal, t.IsTotal));
        Assert.Equal(trials[0].IsTotal, !trials.Any(t => t.Threw));
    }

    [Theory]
    [InlineData("oregon-2025-sikora", 6.47, SoilTexture.Loam)]
    [InlineData("texture-fallback", 6.5, SoilTexture.Sand)]
    [InlineData("texture-fallback", 6.4, SoilTexture.Loam)]
    public void A_target_that_is_not_offered_and_a_texture_without_a_column_have_no_sum(
        string id,
        double target,
        SoilTexture texture
    )
    {
        var trial = LimeMethod.Find(id).Formula.GiveKernel(new Trial(), target, texture);
        Assert.True(trial.IsTotal);
        Assert.False(trial.Threw);
        Assert.All(trial.Rates, rate => Assert.True(double.IsNaN(rate)));
        Assert.All(trial.Remarks, remark => Assert.Equal(LimeRemarks.None, remark));
    }

    private sealed class Trial : ILimeKernelUser<Trial>
    {
        internal bool IsTotal { get; private set; }

        internal bool Threw { get; private set; }

        internal List<double> Rates { get; } = [];

        internal List<LimeRemarks> Remarks { get; } = [];

        public Trial Use<TKernel>(TKernel kernel)
            where TKernel : struct, ILimeKernel
        {
            IsTotal = TKernel.IsTotal;
            foreach (double reading in Odd)
            {
                foreach (double waterPh in Odd)
                {
                    try
                    {
                        Rates.Add(kernel.PoundsPerAcre(reading, waterPh, out var remarks));
                        Remarks.Add(remarks);
                    }
                    catch (Exception e) when (e is ArgumentException or InvalidOperationException)
                    {
                        Threw = true;
                    }
                }
            }

            return this;
        }
    }
}
