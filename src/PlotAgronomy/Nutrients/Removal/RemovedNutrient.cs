namespace PlotAgronomy.Nutrients;

/// <summary>What leaves the plot of one nutrient; a range where the publication prints one.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class RemovedNutrient
{
    internal RemovedNutrient(PlantNutrient nutrient, ApplicationRate low, ApplicationRate high)
    {
        Nutrient = nutrient;
        Low = low;
        High = high;
    }

    /// <summary>Gets the nutrient.</summary>
    public PlantNutrient Nutrient { get; }

    /// <summary>Gets the lower end.</summary>
    public ApplicationRate Low { get; }

    /// <summary>Gets the upper end.</summary>
    public ApplicationRate High { get; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        Low < High ? $"{PlantNutrients.Symbols[Nutrient]}: {Low} to {High}" : $"{PlantNutrients.Symbols[Nutrient]}: {Low}";
}
