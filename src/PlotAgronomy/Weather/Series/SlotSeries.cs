using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <summary>Values over stretches of time that do not overlap, in order; what lies between them is not known.</summary>
internal sealed class SlotSeries
{
    private SlotSeries(ImmutableArray<SlotValue> values) => Values = values;

    internal static SlotSeries Empty { get; } = new([]);

    internal ImmutableArray<SlotValue> Values { get; }

    /// <summary>Orders the values and refuses two for the same time.</summary>
    internal static SlotSeries From(IEnumerable<SlotValue> values, string file, string field)
    {
        ImmutableArray<SlotValue> ordered = [.. values.OrderBy(v => v.Slot.Start)];
        for (int i = 1; i < ordered.Length; i++)
        {
            if (ordered[i].Slot.Start < ordered[i - 1].Slot.End)
            {
                string earlier = FormattableString.Invariant($"overlaps the one in line {ordered[i - 1].Line}");
                throw new DataFormatException(file, ordered[i].Line, field, $"the interval {earlier}");
            }
        }

        return new(ordered);
    }

    /// <summary>An amount that falls evenly within each stretch, summed over a window; what is not known adds nothing.</summary>
    internal double Sum(TimeSlot window) => Overlaps(window).Sum(o => o.Value * o.Hours / o.SlotHours);

    /// <summary>The mean over the hours that are known; null where none is.</summary>
    internal double? Mean(TimeSlot window)
    {
        double hours = 0,
            total = 0;
        foreach (var (value, shared, _) in Overlaps(window))
        {
            hours += shared;
            total += value * shared;
        }

        return hours > 0 ? total / hours : null;
    }

    internal double? Highest(TimeSlot window) => Overlaps(window).Select(o => (double?)o.Value).Max();

    internal double? Lowest(TimeSlot window) => Overlaps(window).Select(o => (double?)o.Value).Min();

    /// <summary>Hours of the window that are known.</summary>
    internal double HoursKnown(TimeSlot window) => Overlaps(window).Sum(o => o.Hours);

    internal bool Covers(TimeSlot window) => window.Hours - HoursKnown(window) < 1e-6;

    private IEnumerable<(double Value, double Hours, double SlotHours)> Overlaps(TimeSlot window)
    {
        for (int i = FirstEndingAfter(window.Start); i < Values.Length && Values[i].Slot.Start < window.End; i++)
        {
            yield return (Values[i].Value, Values[i].Slot.HoursShared(window), Values[i].Slot.Hours);
        }
    }

    /// <summary>The values are in order and do not overlap, so their ends are in order too.</summary>
    private int FirstEndingAfter(DateTimeOffset moment)
    {
        int low = 0,
            high = Values.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = Values[middle].Slot.End > moment ? (low, middle) : (middle + 1, high);
        }

        return low;
    }
}
