namespace PlotAgronomy.Fertilizers;

/// <summary>The kernels: doubles in the units their names say.</summary>
internal static class FertilizerMath
{
    internal static double ProductFor(double nutrientPounds, double percent) => 100 * nutrientPounds / percent;

    internal static double NutrientIn(double productPounds, double percent) => productPounds * percent / 100;
}
