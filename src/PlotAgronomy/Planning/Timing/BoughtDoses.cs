using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>The dressings of nitrogen as they are bought: one figure where the bags hold the lower end of a range.</summary>
internal static class BoughtDoses
{
    internal static ImmutableArray<NitrogenDose> Of(FertilizerAnswer? fertilizer)
    {
        if (fertilizer?.Dressed is not { IsEmpty: false } doses)
        {
            return [];
        }

        double low = doses.Sum(d => d.Low.PoundsPerAcre);
        return
            fertilizer.LaterNitrogen.OrNull()?.Purchase.OrNull()?.Balance(PlantNutrient.Nitrogen) is { Delivered: var brought }
            && Tolerance.AreEqual(brought.PoundsPerAcre, low)
            ? [.. doses.Select(d => d.Less(0, d.High.PoundsPerAcre - d.Low.PoundsPerAcre))]
            : doses;
    }
}
