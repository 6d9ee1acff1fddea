using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>A lime formula whose sum is a kernel.</summary>
internal abstract class LimeFormulaBy<TKernel>(CsvRow method) : LimeFormula(method)
    where TKernel : struct, ILimeKernel
{
    /// <summary>The kernel to a target the formula offers.</summary>
    internal abstract TKernel KernelTo(double targetPh, SoilTexture? texture);

    internal override double? PoundsPerAcre(double reading, PlotSoil soil, double targetPh)
    {
        double pounds = KernelFor(soil, targetPh).PoundsPerAcre(reading, WaterPh(soil), out _);
        return double.IsNaN(pounds) ? null : pounds;
    }

    internal override T GiveKernel<T>(ILimeKernelUser<T> user, double targetPh, SoilTexture? texture) =>
        Offers(targetPh) && TakesTexture(texture)
            ? user.Use(KernelTo(targetPh, texture))
            : user.Use(default(NoLimeKernel));

    protected TKernel KernelFor(PlotSoil soil, double targetPh) => KernelTo(targetPh, soil.Texture);

    protected static double WaterPh(PlotSoil soil) => soil.PhInWater ?? double.NaN;
}
