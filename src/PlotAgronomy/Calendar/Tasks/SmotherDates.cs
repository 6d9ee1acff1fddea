using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Calendar;

/// <summary>When a smother crop is sown and killed, counted back from the seed or on from the day it was sown.</summary>
internal sealed class SmotherDates
{
    private SmotherDates(CropKind kind, Origin origin) => (Kind, Origin) = (kind, origin);

    internal CropKind Kind { get; }

    internal Origin Origin { get; }

    /// <summary>The days on which it is sown; null while no day is known.</summary>
    internal required DayWindow? Sow { get; init; }

    /// <summary>The days on which it is killed; null while no day is known.</summary>
    internal required DayWindow? Kill { get; init; }

    internal required (int Low, int High) Days { get; init; }

    internal ImmutableArray<Finding> Findings { get; private init; } = [];

    /// <summary>Null for another way, and for a kind without printed days.</summary>
    internal static SmotherDates? Of(SeasonRequest request)
    {
        if (
            request.Weeds is not { Way: WeedWay.SmotherCrop, SmotherKind: { } kind } weeds
            || SmotherCrop.Of(kind) is not { } crop
        )
        {
            return null;
        }

        if (request.SowOn is not { } seed)
        {
            return Undated(weeds.SmotherSownOn, kind, crop);
        }

        bool isOverSeed = request.Ground is GroundWork.RolledDown or GroundWork.MownDown;
        var killBy = seed.AddDays(isOverSeed ? 0 : -CalendarConstants.Days("kill-before-seed"));
        return weeds.SmotherSownOn is { } sown ? From(sown, killBy, seed, kind, crop) : Back(killBy, kind, crop);
    }

    /// <summary>While the day of the seed is not set.</summary>
    private static SmotherDates Undated(DateOnly? sown, CropKind kind, SmotherCrop crop)
    {
        var days = crop.DaysFrom(sown ?? DateOnly.MaxValue);
        return new(kind, crop.Origin)
        {
            Sow = sown is { } on ? new(on, on) : null,
            Kill = sown is { } from ? new(from.AddDays(days.Low), from.AddDays(days.High)) : null,
            Days = days,
        };
    }

    private static SmotherDates Back(DateOnly killBy, CropKind kind, SmotherCrop crop)
    {
        int slack = CalendarConstants.Days("smother-slack");
        var days = crop.DaysFrom(killBy.AddDays(-crop.DaysFrom(killBy).High));
        return new(kind, crop.Origin)
        {
            Sow = new(killBy.AddDays(-days.High - slack), killBy.AddDays(-days.Low)),
            Kill = new(killBy.AddDays(-slack), killBy),
            Days = days,
        };
    }

    private static SmotherDates From(DateOnly sown, DateOnly killBy, DateOnly seed, CropKind kind, SmotherCrop crop)
    {
        var days = crop.DaysFrom(sown);
        var soonest = sown.AddDays(days.Low);
        var latest = sown.AddDays(days.High);
        var remarks = new List<Finding>();
        if (soonest > killBy)
        {
            remarks.Add(
                FindingCatalog.Create(
                    CalendarCodes.SmotherShort,
                    ("smother", kind.ShortName),
                    ("sown", CalendarText.Date(sown)),
                    ("days", CalendarText.Count(killBy.DayNumber - sown.DayNumber)),
                    ("least", CalendarText.Count(days.Low))
                )
            );
        }

        int idle = seed.DayNumber - latest.DayNumber;
        if (idle > CalendarConstants.Days("smother-idle"))
        {
            remarks.Add(
                FindingCatalog.Create(
                    CalendarCodes.SmotherLong,
                    ("smother", kind.ShortName),
                    ("sown", CalendarText.Date(sown)),
                    ("kill", CalendarText.Date(latest)),
                    ("planting", CalendarText.Date(seed)),
                    ("days", CalendarText.Count(idle))
                )
            );
        }

        var end = latest < killBy ? latest : killBy;
        return new(kind, crop.Origin)
        {
            Sow = new(sown, sown),
            Kill = new(soonest < end ? soonest : end, end),
            Days = days,
            Findings = [.. remarks],
        };
    }
}
