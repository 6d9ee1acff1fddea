namespace PlotAgronomy.Records;

/// <summary>The sums of this room, of doubles.</summary>
internal static class RecordMath
{
    internal const double SquareFeetPerAcre = ExactUnits.SquareFeetPerAcre;
    internal const double GramsPerPound = ExactUnits.GramsPerPound;

    internal static double LoadWeight(double bags, double bagPounds) => bags * bagPounds;

    internal static double PutDown(double pounds, double acres) => pounds / acres;

    internal static double Brought(double productPounds, double percent, double acres) => productPounds * percent / 100 / acres;

    /// <summary>The least difference of two readings that is more than their noise.</summary>
    internal static double LeastRealChange(double z, double standardDeviation) => z * Math.Sqrt(2) * standardDeviation;

    /// <summary>The pH that lime promises, as far as it was put down and has worked.</summary>
    internal static double PromisedPh(double ph, double targetPh, double shareAtWork, double margin) =>
        ph + (Math.Max(0, targetPh - ph) * shareAtWork) + margin;

    internal static double PerSquareFoot(double plants, double hoops, double hoopSquareFeet) => plants / (hoops * hoopSquareFeet);

    internal static double LivePerSquareFoot(double livePounds, double seedsPerPound, double acres) =>
        livePounds * seedsPerPound / (acres * SquareFeetPerAcre);

    internal static double Emerged(double plants, double liveSeeds) => plants / liveSeeds;

    internal static double YieldPoundsPerAcre(double dryGrams, double squareFeet) =>
        dryGrams * SquareFeetPerAcre / (GramsPerPound * squareFeet);

    internal static double DryShare(double dry, double wet, double tare) => (dry - tare) / (wet - tare);

    /// <summary>Below 0 where more stood outside by chance.</summary>
    internal static double UsePercent(double caged, double open) => (caged - open) / caged * 100;

    internal static double BrowsedPercent(ReadOnlySpan<double> plants, ReadOnlySpan<double> percents)
    {
        double eaten = 0;
        double all = 0;
        for (int i = 0; i < plants.Length; i++)
        {
            eaten += plants[i] * percents[i];
            all += plants[i];
        }

        return eaten / all;
    }

    internal static double PerDay(double images, double days) => images / days;

    /// <summary>The weight of an own mean against that of all: near 1 with many observations.</summary>
    internal static double ShrinkWeight(double between, double within, double count) => between / (between + (within / count));

    internal static double Shrunk(double meanOfAll, double weight, double ownMean) =>
        meanOfAll + (weight * (ownMean - meanOfAll));

    /// <summary>Observations at which the interval of a mean leaves out another mean; without end where both are one.</summary>
    internal static double ObservationsToTell(double z, double ownMean, double other, double within) =>
        Math.Pow(z / (ownMean - other), 2) * within;

    internal static double RateFactor(double usual, double own, double most) => Math.Min(usual / own, most);
}
