using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.PlanFiles;

/// <summary>Packages or hoppers so small, goods so weak or a plot so large, that nobody counts out what the plot takes: a unit is
/// wrong.</summary>
internal sealed class PackageCounts(Area area)
{
    private const string IsAUnitWrong = "is a unit wrong?";

    /// <summary>The most that the plot takes of any goods offered that can be counted.</summary>
    private double mostPounds = Acres(area) * PlanLimits.All["rate-high"];

    /// <summary>Reports every offer of a list whose packages could not be counted.</summary>
    /// <param name="at">The part of the file with the list.</param>
    /// <param name="list">The list.</param>
    /// <param name="mostPerAcre">The most that an acre takes of it, in lb.</param>
    internal void Check<T>(PlanPart at, PlanField<ImmutableArray<Offer<T>>> list, Func<T, double> mostPerAcre)
        where T : class
    {
        var offers = at.All(list);
        for (int i = 0; i < offers.Length; i++)
        {
            double pounds = Acres(area) * mostPerAcre(offers[i].Item);
            if (IsBeyondCount(pounds / offers[i].Package.Pounds))
            {
                at.ReportItem(list, i, $"packages of {offers[i].Package} cannot be counted out for {Plot}: {IsAUnitWrong}");
            }
            else
            {
                mostPounds = Math.Max(mostPounds, pounds);
            }
        }
    }

    /// <summary>Reports a hopper whose fillings could not be counted.</summary>
    /// <param name="at">The part of the file with the hopper.</param>
    /// <param name="hopper">The hopper.</param>
    internal void Check(PlanPart at, PlanField<PackageSize> hopper)
    {
        if (at.Maybe(hopper) is { } size && IsBeyondCount(mostPounds / LeastPoundsIn(size)))
        {
            at.Report(hopper, $"fillings of this hopper cannot be counted out for {Plot}: {IsAUnitWrong}");
        }
    }

    /// <summary>The most of a lime that an acre takes, in lb: the heaviest dressing by its least strength.</summary>
    internal static double MostOf(LimingMaterial lime) => PlanLimits.All["rate-high"] / lime.LeastStrength;

    /// <summary>The most of a lot of seed that an acre takes, in lb: the heaviest dressing by what is alive of it.</summary>
    internal static double MostOf(SeedLot lot) => PlanLimits.All["rate-high"] / lot.PureLiveSeedPart().Value;

    /// <summary>The most of a fertilizer that an acre takes, in lb: the highest need by the least it holds of any
    /// nutrient.</summary>
    internal static double MostOf(FertilizerProduct product) =>
        PlanLimits.All["need-high"]
        / product.Analysis.Holds.Select(n => product.Analysis.Percent(n) / 100).DefaultIfEmpty(1).Min();

    private string Plot => Amounts.Print(area, "ac", 2);

    private static double Acres(Area area)
    {
        double acres = area.Acres;
        return acres;
    }

    private static double LeastPoundsIn(PackageSize hopper)
    {
        double cubicFeet = hopper.Volume?.CubicFeet ?? 0;
        return hopper.Weight?.Pounds ?? cubicFeet * PlanLimits.All["loosest"];
    }

    private static bool IsBeyondCount(double packages) => packages > PlanLimits.All["packages-high"];
}
