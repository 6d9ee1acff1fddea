namespace PlotAgronomy.Weather;

/// <summary>The evaporating surface layer of FAO-56 as doubles: depths in mm.</summary>
internal static class SeedbedMath
{
    internal static double GreatestCoefficient(
        double standard,
        double wind,
        double lowestHumidity,
        double height,
        double basal
    ) => Math.Max(standard + (((0.04 * (wind - 2)) - (0.004 * (lowestHumidity - 45))) * Math.Pow(height / 3, 0.3)), basal + 0.05);

    internal static double TotalEvaporable(double fieldCapacity, double wiltingPoint, double layer) =>
        1000 * (fieldCapacity - (0.5 * wiltingPoint)) * layer;

    internal static double StartDepletion(double before, double rain) => Math.Max(before - rain, 0);

    internal static double Percolation(double rain, double before) => Math.Max(rain - before, 0);

    /// <summary>What share of the greatest evaporation the surface still gives.</summary>
    internal static double Reduction(double total, double readily, double depletion) =>
        depletion <= readily ? 1 : Math.Max(0, ReductionWhenDrying(total, readily, depletion));

    internal static double ReductionWhenDrying(double total, double readily, double depletion) =>
        (total - depletion) / (total - readily);

    internal static double EvaporationCoefficient(double reduction, double greatest, double basal, double exposed) =>
        Math.Min(reduction * (greatest - basal), exposed * greatest);

    /// <summary>No more than the layer still holds.</summary>
    internal static double Evaporation(double coefficient, double reference, double total, double depletion, double exposed) =>
        Math.Min(coefficient * reference, (total - depletion) * exposed);

    internal static double EndDepletion(double start, double evaporation, double exposed) => start + (evaporation / exposed);

    internal static double MeanOf(double sum, double days) => sum / days;
}
