using System.Collections.Immutable;

namespace PlotAgronomy.Weather;

/// <summary>Cuts the rain of a grid into the service's own periods of six hours.</summary>
/// <remarks>Equal neighbouring chances are merged in the document, and an hourly one repeats the chance of its six hours: neither
/// the length of an entry nor the hour is the period that a chance is given for.</remarks>
internal static class RainBlocks
{
    private static TimeSpan Step => TimeSpan.FromHours(WeatherConstants.All["chance-step"]);

    internal static ImmutableArray<RainBlock> Cut(SlotSeries rain, SlotSeries chance)
    {
        var all = rain.Values.Concat(chance.Values).Select(v => v.Slot).ToList();
        if (all.Count == 0)
        {
            return [];
        }

        var first = all.Min(s => s.Start).ToUniversalTime();
        var last = all.Max(s => s.End);
        var start = new DateTimeOffset(first.Ticks - (first.Ticks % Step.Ticks), TimeSpan.Zero);
        var blocks = ImmutableArray.CreateBuilder<RainBlock>();
        for (; start < last; start += Step)
        {
            var slot = new TimeSlot(start, start + Step);
            double? highest = chance.Highest(slot) / 100;
            double? amount = rain.HoursKnown(slot) > 0 ? rain.Sum(slot) : null;
            if (highest is not null || amount is not null)
            {
                blocks.Add(new(Known(slot, rain, chance), highest, amount));
            }
        }

        return blocks.ToImmutable();
    }

    /// <summary>The part of a block that the document speaks of: its first begins before the document was issued.</summary>
    private static TimeSlot Known(TimeSlot slot, SlotSeries rain, SlotSeries chance)
    {
        var spoken = (rain.HoursKnown(slot) > 0 ? rain : chance).Values.Where(v => v.Slot.HoursShared(slot) > 0).ToList();
        var from = spoken.Min(v => v.Slot.Start);
        var to = spoken.Max(v => v.Slot.End);
        return new(from > slot.Start ? from : slot.Start, to < slot.End ? to : slot.End);
    }
}
