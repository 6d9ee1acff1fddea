using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Calendar;

/// <summary>The reasons of one day that the weather room does not know: ground, work, lime, printed dates.</summary>
internal sealed class DayReasons(DecisionRequest request, DateOnly date, SeedbedOutlook ground, int? dryHours)
{
    /// <summary>All reasons of one kind, those of the weather with them.</summary>
    internal ImmutableArray<Finding> With(KindToSow sown, PlantingDay day, KindDates dates) =>
        Finding.InOrder([.. day.Reasons, .. OfKind(sown, dates), .. Work(), .. Lime(sown)]);

    private IEnumerable<Finding> OfKind(KindToSow sown, KindDates dates)
    {
        if (sown.WaitsForPh is { } ph)
        {
            yield return FindingCatalog.Create(
                CalendarCodes.TooSour,
                ("kind", sown.Kind.ShortName),
                ("ph", Amounts.Print(ph, 1))
            );
        }

        if (dates.IsInSeason == false)
        {
            yield return FindingCatalog.Create(
                CalendarCodes.OutsideWindow,
                ("kind", sown.Kind.ShortName),
                ("date", CalendarText.Date(date)),
                ("windows", string.Join(", ", dates.Windows.Select(w => w.ToString()).Distinct()))
            );
        }

        if (dates is { EarlyFrost: { } frost, DaysToEarlyFrost: > 0 and var days })
        {
            yield return FindingCatalog.Create(
                CalendarCodes.FrostLeft,
                ("days", CalendarText.Count(days)),
                ("frost", CalendarText.Date(frost))
            );
        }
    }

    private IEnumerable<Finding> Work()
    {
        if (request.WorksTheGround && IsSoaked)
        {
            yield return FindingCatalog.Create(CalendarCodes.TooWet);
        }

        if (dryHours is { } hours)
        {
            bool isShort = hours < CalendarConstants.All["dry-work-hours"];
            yield return FindingCatalog.Create(
                isShort ? CalendarCodes.RainThatDay : CalendarCodes.DryThatDay,
                ("hours", CalendarText.Count(hours))
            );
        }
    }

    /// <summary>By the end of the day before: what falls on the day itself finds the work done.</summary>
    internal bool IsSoaked =>
        ground.Days.FirstOrDefault(d => d.Date == date.AddDays(-1)) is { } before
        && before.RainMillimeters > 0
        && before.EndMillimeters < CalendarConstants.All["wet-to-work"];

    /// <summary>Young lime matters to a kind that the soil was too sour for.</summary>
    private IEnumerable<Finding> Lime(KindToSow sown)
    {
        if (request.LimedOn is { } limed && limed <= date)
        {
            int days = date.DayNumber - limed.DayNumber;
            yield return FindingCatalog.Create(
                sown.WaitsForPh is not null && days < CalendarConstants.Days("lime-starts")
                    ? CalendarCodes.LimeDaysShort
                    : CalendarCodes.LimeDays,
                ("days", CalendarText.Count(days))
            );
        }
    }
}
