using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Asks after a pace, swath, flow or rate that no spreader has: in one place, for every entry of the room.</summary>
internal static class SpreadingPlausibility
{
    internal static IEnumerable<Finding> Of(
        Speed? pace = null,
        Length? swath = null,
        MassFlow? flow = null,
        ApplicationRate? rate = null
    ) =>
        OfPace(pace?.MilesPerHour)
            .Concat(Ask("swath", swath?.Feet, "plausible-swath-low", "plausible-swath-high", "ft"))
            .Concat(Ask("flow", flow?.PoundsPerMinute, null, "plausible-flow-high", "lb/min"))
            .Concat(Ask("rate", rate?.PoundsPerAcre, null, "plausible-rate-high", "lb/ac"));

    private static IEnumerable<Finding> OfPace(double? milesPerHour) =>
        Ask("pace", milesPerHour, "plausible-pace-low", "plausible-pace-high", "mph");

    private static IEnumerable<Finding> Ask(string what, double? value, string? low, string high, string unit)
    {
        double least = low is null ? 0 : SpreadingConstants.All[low];
        double most = SpreadingConstants.All[high];
        if (value is { } given && (Tolerance.IsAbove(given, most) || Tolerance.IsBelow(given, least)))
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.Implausible,
                ("what", what),
                ("value", $"{Amounts.Print(given, 3)} {unit}"),
                ("limits", $"{Amounts.Print(least, 2)} to {Amounts.Print(most, 0)} {unit}")
            );
        }
    }
}
