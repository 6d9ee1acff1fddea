using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.PlanFiles;

/// <summary>Packages so small, or a plot so large, that nobody counts out what the plot takes: a unit is wrong.</summary>
internal static class PackageCounts
{
    /// <summary>Reports every offer of a list whose packages could not be counted.</summary>
    internal static void Check<T>(PlanPart at, PlanField<ImmutableArray<Offer<T>>> list, Area area)
        where T : class
    {
        double acres = area.Acres;
        double pounds = acres * PlanLimits.All["heaviest-dressing"];
        var offers = at.All(list);
        for (int i = 0; i < offers.Length; i++)
        {
            if (pounds / offers[i].Package.Pounds > PlanLimits.All["packages-high"])
            {
                at.ReportItem(
                    list,
                    i,
                    $"packages of {offers[i].Package} cannot be counted out for {Amounts.Print(area, "ac", 2)}: is a unit wrong?"
                );
            }
        }
    }
}
