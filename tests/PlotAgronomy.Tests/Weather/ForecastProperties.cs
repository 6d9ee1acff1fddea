using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Tests.Support;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Weather;

public class ForecastProperties
{
    private static readonly DateTimeOffset Start = WeatherFiles.Utc(2026, 9, 1, 0);

    [Property]
    public bool Parts_of_a_day_add_up_however_the_intervals_are_split(NonEmptyArray<PositiveInt> minutes, NonEmptyArray<byte> cuts)
    {
        var at = Start;
        var values = new List<SlotValue>();
        foreach (var length in minutes.Get.Select((m, i) => (Minutes: 1 + (m.Get % 700), Amount: (m.Get * 7 % 13) + (i * 0.1))))
        {
            values.Add(new(new(at, at.AddMinutes(length.Minutes)), length.Amount));
            at = at.AddMinutes(length.Minutes);
        }

        var split = values.SelectMany((v, i) => Split(v, 1 + (cuts.Get[i % cuts.Get.Length] % 5))).ToList();
        var whole = SlotSeries.From(values, "f", "x");
        var parts = SlotSeries.From(split, "f", "x");
        var edges = cuts.Get.Select(c => Start + ((at - Start) * (c / 255.0))).Append(Start).Append(at).Distinct().Order().ToList();
        double summed = edges.Zip(edges.Skip(1)).Sum(e => parts.Sum(new(e.First, e.Second)));
        return Near.Equal(whole.Sum(new(Start, at)), summed, 1e-9) && Near.Equal(whole.Sum(new(Start, at)), values.Sum(v => v.Value), 1e-9);
    }

    [Property]
    public bool The_local_days_of_a_year_hold_every_hour_once(byte month)
    {
        var zone = month % 2 == 0 ? WeatherFiles.Central : WeatherFiles.Eastern;
        var slots = Enumerable.Range(0, 366).Select(i => TimeSlot.OfDate(new DateOnly(2024, 1, 1).AddDays(i), zone)).ToList();
        return slots.Zip(slots.Skip(1)).All(s => s.First.End == s.Second.Start) && slots.Sum(s => s.Hours) == 366 * 24;
    }

    [Property]
    public bool More_rain_never_lowers_the_chance_of_enough(NonEmptyArray<(byte Chance, byte Amount)> periods, byte more, PositiveInt enough, bool isGeneral)
    {
        var shape = isGeneral ? RainShape.General : RainShape.Patchy;
        var amount = Length.FromMillimeters(1 + (enough.Get % 50));
        var less = Chances(periods.Get, 0, amount, shape);
        var greater = Chances(periods.Get, 1 + more, amount, shape);
        return Rises(less.AsStrongestPeriod, greater.AsStrongestPeriod)
            && Rises(less.AsOneOfIndependent, greater.AsOneOfIndependent)
            && Rises(less.AsIndependentPeriods, greater.AsIndependentPeriods)
            && Rises(less.Low, greater.Low)
            && Rises(less.High, greater.High);
    }

    [Property]
    public bool The_chance_of_rain_lies_between_its_bounds(NonEmptyArray<(byte Chance, byte Amount)> periods)
    {
        var rain = Outlook(periods.Get, 0);
        return rain.ChanceAtLeast.Value <= rain.ChanceOfAny.Value + 1e-12 && rain.ChanceOfAny.Value <= rain.ChanceAtMost.Value + 1e-12;
    }

    [Property]
    public bool A_longer_window_never_has_less_rain(NonEmptyArray<(byte Chance, byte Amount)> periods, byte hours)
    {
        var forecast = Forecast(periods.Get, 0);
        var shorter = new RainOutlook(forecast, new(Start, Start.AddHours(1 + (hours % 100))));
        var longer = new RainOutlook(forecast, new(Start, Start.AddHours(2 + (hours % 100))));
        return shorter.Millimeters <= longer.Millimeters + 1e-9 && shorter.ChanceAtLeast <= longer.ChanceAtLeast && shorter.ChanceAtMost <= longer.ChanceAtMost;
    }

    private static bool Rises(Fraction less, Fraction more) => less.Value <= more.Value + 1e-9;

    private static IEnumerable<SlotValue> Split(SlotValue value, int parts)
    {
        var step = (value.Slot.End - value.Slot.Start) / parts;
        for (int i = 0; i < parts; i++)
        {
            var from = value.Slot.Start + (step * i);
            var to = i == parts - 1 ? value.Slot.End : from + step;
            yield return new(new(from, to), value.Value * ((to - from) / (value.Slot.End - value.Slot.Start)));
        }
    }

    private static RainChance Chances((byte Chance, byte Amount)[] periods, int more, Length amount, RainShape shape) => Outlook(periods, more).AtLeast(amount, shape);

    private static RainOutlook Outlook((byte Chance, byte Amount)[] periods, int more) => new(Forecast(periods, more), new(Start, Start.AddHours(6 * periods.Take(8).Count())));

    private static WeatherForecast Forecast((byte Chance, byte Amount)[] periods, int more) =>
        new()
        {
            FileName = "drawn",
            Blocks = [.. periods.Take(8).Select((p, i) => new RainBlock(new(Start.AddHours(6 * i), Start.AddHours(6 * (i + 1))), p.Chance % 101 / 100.0, (p.Amount + more) / 10.0))],
        };
}
