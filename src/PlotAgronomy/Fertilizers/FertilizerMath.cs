namespace PlotAgronomy.Fertilizers;

/// <summary>The kernels: doubles in the units their names say.</summary>
internal static class FertilizerMath
{
    internal static double ProductFor(double nutrientPounds, double percent) => 100 * nutrientPounds / percent;

    internal static double NutrientIn(double productPounds, double percent) => productPounds * percent / 100;

    internal static decimal Price(decimal packages, decimal pricePerPackage) => packages * pricePerPackage;

    internal static double TonsFor(double needPounds, double poundsPerTon) => needPounds / poundsPerTon;

    internal static double Available(double totalPounds, double part) => totalPounds * part;

    internal static double Filler(double batchPounds, double materialPounds) => Math.Max(0, batchPounds - materialPounds);

    internal static double PoundsPerTon(double pounds, double batchPounds) => ExactUnits.PoundsPerShortTon * pounds / batchPounds;

    internal static double PercentOf(double nutrientPounds, double totalPounds) => 100 * nutrientPounds / totalPounds;

    /// <summary>The control officials' overall index, in percent.</summary>
    internal static double OverallIndex(double worthFound, double worthGuaranteed) => 100 * worthFound / worthGuaranteed;
}
