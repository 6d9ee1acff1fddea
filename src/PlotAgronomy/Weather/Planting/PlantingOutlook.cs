using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <summary>Sow now or wait: each day of a forecast with what speaks for and against it, and no mark that adds them up.</summary>
/// <remarks>The rain of the week after sowing was the strongest factor for seed broadcast in standing crops (WX-AJ2013). What
/// is enough
/// rain, and how likely it should be, is common practice.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class PlantingOutlook
{
    private PlantingOutlook(CropKind kind, ImmutableArray<PlantingDay> days)
    {
        Kind = kind;
        Days = days;
    }

    /// <summary>Gets the kind.</summary>
    public CropKind Kind { get; }

    /// <summary>Gets the days, the first the one on which the question is asked.</summary>
    public ImmutableArray<PlantingDay> Days { get; }

    /// <summary>Gets the verdict for the first day.</summary>
    public PlantingVerdict Now => Days[0].Verdict;

    /// <summary>Gets the days on which less speaks against sowing than on the first.</summary>
    public ImmutableArray<PlantingDay> BetterDays => [.. Days.Where(d => d.Verdict < Now)];

    /// <summary>Gets the date to wait for: the first of the days with the best verdict; null where none is better than the
    /// first.</summary>
    internal DateOnly? WaitUntil => BetterDays is { Length: > 0 } better ? better.MinBy(d => (d.Verdict, d.Date))!.Date : null;

    /// <summary>Lays the days of a forecast side by side.</summary>
    /// <param name="request">What is to be sown, and what is known of the weeks ahead.</param>
    /// <returns>Every day that the forecast tells rain of; open where there is none, or where the kind has no clock.</returns>
    public static Answer<PlantingOutlook> Of(PlantingRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var days = ImmutableArray.CreateBuilder<PlantingDay>();
        foreach (var date in request.Seedbed.Days.Select(d => d.Date))
        {
            var emergence = EmergenceOutlook.Of(request.Seedbed, request.Kind, date, request.Placement);
            if (!emergence.TryGet(out var clock))
            {
                return Answers.Open<PlantingOutlook>(() => emergence.Questions);
            }

            var end = TimeSlot.OfDate(date.AddDays(PlantingReasons.WindowDays), request.Zone).Start;
            var rain = new RainOutlook(request.Forecast, new(TimeSlot.OfDate(date, request.Zone).Start, end));
            if (rain.HoursOfAmount > 0)
            {
                days.Add(DayOf(request, date, rain, clock));
            }
        }

        string first = DateText.Of(request.Seedbed.Days[0].Date);
        string last = DateText.Of(request.Seedbed.Days[^1].Date);
        return days.Count > 0
            ? Answers.Given(new PlantingOutlook(request.Kind, days.ToImmutable()))
            : Answers.Open<PlantingOutlook>(() => [WeatherQuestions.Rain(first, last)]);
    }

    private static PlantingDay DayOf(PlantingRequest request, DateOnly date, RainOutlook rain, EmergenceOutlook emergence)
    {
        var enough = rain.AtLeast(PlantingReasons.EnoughRain);
        return new()
        {
            Date = date,
            Rain = rain,
            Enough = enough,
            Emergence = emergence,
            Reasons = new PlantingReasons(request, date, rain, enough, emergence).All,
        };
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Kind.ShortName}: {PlantingDay.VerdictWords[Now]}";
}
