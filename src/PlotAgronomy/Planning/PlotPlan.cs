using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>A plan file that was read without a mistake: one plot, one planting.</summary>
public sealed class PlotPlan
{
    internal PlotPlan(PlanContent content) => Content = content;

    /// <summary>Gets the name of the plot.</summary>
    public string PlotName => Content.Site.Name;

    /// <summary>Gets the area of the plot.</summary>
    public Area Area => Content.Site.Area;

    /// <summary>Gets the day of planting.</summary>
    public DateOnly PlantingDate => Content.PlantingDate;

    /// <summary>Gets how the seed is planted.</summary>
    public PlantingMethod Method => Content.Method;

    /// <summary>Gets the one currency of all prices.</summary>
    public Currency Currency => Content.Currency;

    /// <summary>Gets the laboratory's report as printed.</summary>
    public SoilReport Report => Content.Report;

    internal PlanContent Content { get; }
}
