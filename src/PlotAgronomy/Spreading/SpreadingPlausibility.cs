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
        Ask(Pace, pace?.MilesPerHour)
            .Concat(Ask(Swath, swath?.Feet))
            .Concat(Ask(Flow, flow?.PoundsPerMinute))
            .Concat(Ask(Rate, rate?.PoundsPerAcre));

    internal static PlausibleSpan Pace => new("pace", "plausible-pace-low", "plausible-pace-high", "mph");

    internal static PlausibleSpan Swath => new("swath", "plausible-swath-low", "plausible-swath-high", "ft");

    internal static PlausibleSpan Flow => new("flow", null, "plausible-flow-high", "lb/min");

    internal static PlausibleSpan Rate => new("rate", null, "plausible-rate-high", "lb/ac");

    private static IEnumerable<Finding> Ask(PlausibleSpan span, double? value)
    {
        if (value is { } given && !span.Holds(given))
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.Implausible,
                ("what", span.What),
                ("value", $"{Amounts.Print(given, 3)} {span.Unit}"),
                ("limits", span.InWords)
            );
        }
    }
}
