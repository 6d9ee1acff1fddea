using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>One nutrient of a laboratory's printed recommendation, in the form of a fertilizer label.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PrintedRate
{
    private PrintedRate(PlantNutrient nutrient, ApplicationRate low, ApplicationRate high, bool printedAsElement)
    {
        Nutrient = nutrient;
        Low = low;
        High = high;
        WasPrintedAsElement = printedAsElement;
    }

    /// <summary>Gets the nutrient.</summary>
    public PlantNutrient Nutrient { get; }

    /// <summary>Gets the rate, or the lower end of a printed range.</summary>
    public ApplicationRate Low { get; }

    /// <summary>Gets the rate, or the upper end of a printed range.</summary>
    public ApplicationRate High { get; }

    /// <summary>Gets whether the laboratory printed P or K and not P2O5 or K2O.</summary>
    public bool WasPrintedAsElement { get; }

    /// <summary>A rate printed as N, P2O5, K2O or another nutrient of a label.</summary>
    /// <param name="nutrient">Nutrient.</param>
    /// <param name="low">Rate, or the lower end of a range; lb/ac and lb/1000 ft2 are the same kind of amount.</param>
    /// <param name="high">Upper end of a range; null for a single figure.</param>
    /// <returns>The printed rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such nutrient, or the upper end below the lower.</exception>
    public static PrintedRate FromRate(PlantNutrient nutrient, ApplicationRate low, ApplicationRate? high = null)
    {
        Guard.Defined(nutrient);
        if (high is { } upper)
        {
            Guard.AtLeast(upper.PoundsPerAcre, low.PoundsPerAcre, "lb/ac (the lower end of the range)", nameof(high));
        }

        return new PrintedRate(nutrient, low, high ?? low, false);
    }

    /// <summary>A rate printed as the element P or K: it is turned into P2O5 or K2O.</summary>
    /// <param name="nutrient">Phosphate for P, potash for K.</param>
    /// <param name="element">Rate of the element.</param>
    /// <returns>The printed rate, as the oxide.</returns>
    /// <exception cref="ArgumentException">A nutrient whose label form is the element.</exception>
    /// <remarks>P2O5 = 2.2913 P; K2O = 1.2046 K.</remarks>
    internal static PrintedRate FromElement(PlantNutrient nutrient, ApplicationRate element)
    {
        double factor = nutrient switch
        {
            PlantNutrient.Phosphate => AtomicMasses.PhosphatePerPhosphorus,
            PlantNutrient.Potash => AtomicMasses.PotashPerPotassium,
            _ => throw new ArgumentException(
                $"{SoilWords.For(nutrient)} stands on a label as the element itself.",
                nameof(nutrient)
            ),
        };
        return new PrintedRate(nutrient, element * factor, element * factor, true);
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Nutrient}: {Low} to {High}";
}
