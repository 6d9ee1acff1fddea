using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>A weather forecast that was handed in: the grid or the half days of the US National Weather Service, or typed by
/// hand. All make the same object.</summary>
/// <remarks>What a document does not tell is not known, and never nothing: a forecast of rain may end sooner than the
/// document.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed partial class WeatherForecast
{
    internal WeatherForecast() { }

    /// <summary>Gets the name of the file, or what else it was made of.</summary>
    public required string FileName { get; init; }

    /// <summary>Gets when the service issued it; null where it is not told.</summary>
    public DateTimeOffset? Issued { get; init; }

    /// <summary>Gets the height of the ground above the sea; null where it is not told.</summary>
    public Length? Elevation { get; init; }

    /// <summary>Gets the remarks on what was read, most serious first.</summary>
    public ImmutableArray<Finding> Findings => WhatWasRead.Remarks(Blocks, UnmentionedChances);

    internal ImmutableArray<RainBlock> Blocks { get; init; } = [];

    /// <summary>Periods without a chance, where the document leaves out what is not worth a mention.</summary>
    internal int UnmentionedChances { get; init; }

    internal SlotSeries High { get; init; } = SlotSeries.Empty;

    internal SlotSeries Low { get; init; } = SlotSeries.Empty;

    internal SlotSeries Hourly { get; init; } = SlotSeries.Empty;

    internal SlotSeries DewPoint { get; init; } = SlotSeries.Empty;

    internal SlotSeries Humidity { get; init; } = SlotSeries.Empty;

    internal SlotSeries Wind { get; init; } = SlotSeries.Empty;

    /// <summary>The forecast by local dates.</summary>
    /// <param name="zone">Time zone of the place.</param>
    /// <returns>Every date that the forecast speaks of, in order; what it does not tell of the whole of a date is null.</returns>
    /// <remarks>A high or low belongs to the date that the middle of its stretch falls on.</remarks>
    public ImmutableArray<WeatherDay> Days(TimeZoneInfo zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        var slots = Blocks
            .Select(b => b.Slot)
            .Concat(High.Values.Concat(Low.Values).Concat(Hourly.Values).Select(v => v.Slot))
            .ToList();
        if (slots.Count == 0)
        {
            return [];
        }

        var date = TimeSlot.DateAt(slots.Min(s => s.Start), zone);
        var last = TimeSlot.DateAt(slots.Max(s => s.End).AddTicks(-1), zone);
        var days = ImmutableArray.CreateBuilder<WeatherDay>();
        for (; date <= last; date = date.AddDays(1))
        {
            days.Add(DayOf(date, zone));
        }

        return days.ToImmutable();
    }

    /// <summary>Amount over a window and the hours of it that an amount is told for.</summary>
    internal (double Millimeters, double Hours) AmountIn(TimeSlot window)
    {
        double millimeters = 0,
            hours = 0;
        foreach (var block in Blocks)
        {
            double shared = block.Slot.HoursShared(window);
            if (shared > 0 && block.Millimeters is { } amount)
            {
                hours += shared;
                millimeters += amount * shared / block.Slot.Hours;
            }
        }

        return (millimeters, hours);
    }

    private WeatherDay DayOf(DateOnly date, TimeZoneInfo zone)
    {
        var slot = TimeSlot.OfDate(date, zone);
        var (millimeters, hours) = AmountIn(slot);
        bool hasAllHours = Hourly.Covers(slot);
        double? high = ExtremeOf(High, date, zone, Enumerable.Max) ?? (hasAllHours ? Hourly.Highest(slot) : null);
        double? low = ExtremeOf(Low, date, zone, Enumerable.Min) ?? (hasAllHours ? Hourly.Lowest(slot) : null);
        return new()
        {
            Date = date,
            Rain = slot.Hours - hours < 1e-6 ? Length.FromMillimeters(millimeters) : null,
            High = Degrees(high),
            Low = Degrees(low),
            DewPoint = Degrees(DewPoint.Covers(slot) ? DewPoint.Mean(slot) : null),
            HighestHumidity = Percent(Humidity.Covers(slot) ? Humidity.Highest(slot) : null),
            LowestHumidity = Percent(Humidity.Covers(slot) ? Humidity.Lowest(slot) : null),
            Wind = Wind.Covers(slot) && Wind.Mean(slot) is { } wind ? Speed.FromMetersPerSecond(wind) : null,
            WindHeight = Wind.Covers(slot) ? Length.FromMeters(WeatherConstants.All["wind-height"]) : null,
        };
    }

    private static double? ExtremeOf(
        SlotSeries series,
        DateOnly date,
        TimeZoneInfo zone,
        Func<IEnumerable<double>, double> extreme
    )
    {
        var values = series.Values.Where(v => TimeSlot.DateAt(v.Slot.Middle, zone) == date).Select(v => v.Value).ToList();
        return values.Count == 0 ? null : extreme(values);
    }

    private static Temperature? Degrees(double? celsius) => celsius is { } c ? Temperature.FromDegreesCelsius(c) : null;

    private static Fraction? Percent(double? percent) => percent is { } p ? Fraction.FromPercent(p) : null;

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        Issued is { } day ? FormattableString.Invariant($"{FileName}, issued {day:yyyy-MM-dd}") : FileName;
}
