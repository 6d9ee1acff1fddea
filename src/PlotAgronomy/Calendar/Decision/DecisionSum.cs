using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Calendar;

/// <summary>Works a decision out: seedbed once, then each kind over the days, then the days with all kinds.</summary>
internal sealed class DecisionSum(DecisionRequest request)
{
    internal Answer<WeighedDays> Answer()
    {
        if (DayRun.Of(request.Forecast, request.Observed, request.Zone) is not { } run)
        {
            return Answers.Open<WeighedDays>(() => [CalendarQuestions.Forecast(request.Forecast.FileName)]);
        }

        if (PlacePoint.Of(request.Where, request.Forecast, request.Place) is not var (point, placeRemark))
        {
            return Answers.Open<WeighedDays>(() => [CalendarQuestions.Where()]);
        }

        var (texture, textureRemark) = SurfaceTexture.Of(request.Texture);
        var seedbed = SeedbedOutlook.Of(
            new()
            {
                Days = run.Days,
                Place = point,
                Texture = texture,
                Elevation = request.Forecast.Elevation,
            }
        );
        if (!seedbed.TryGet(out var ground))
        {
            return Answers.Open<WeighedDays>(() => seedbed.Questions);
        }

        var outlooks = request.Kinds.Select(k => PlantingOutlook.Of(Asked(k, ground))).ToList();
        if (outlooks.Find(o => o.State == AnswerState.Open) is { } open)
        {
            return Answers.Open<WeighedDays>(() => open.Questions);
        }

        return Answers.Given(
            new WeighedDays(
                [.. Days(run, ground, [.. outlooks.Select(o => o.Value)])],
                [.. new[] { placeRemark, textureRemark }.OfType<Finding>()]
            )
        );
    }

    internal static IEnumerable<OpenQuestion> Questions(DecisionRequest request)
    {
        if (request.Region is null)
        {
            yield return CalendarQuestions.Where();
        }

        if (request.Texture is null)
        {
            yield return WeatherQuestions.Texture();
        }

        if (request.Frost is null)
        {
            yield return CalendarQuestions.Frost();
        }
    }

    /// <summary>A kind that overwinters is not held against the first freeze.</summary>
    private PlantingRequest Asked(KindToSow sown, SeedbedOutlook ground) =>
        new()
        {
            Kind = sown.Kind,
            Placement = sown.Placement,
            Seedbed = ground,
            Forecast = request.Forecast,
            Zone = request.Zone,
            Frost = sown.Kind.StopsAtFrost ? request.Frost : null,
        };

    private IEnumerable<DecisionDay> Days(DayRun run, SeedbedOutlook ground, ImmutableArray<PlantingOutlook> outlooks)
    {
        var dates = outlooks[0].Days.Select(d => d.Date).Where(d => d >= run.First);
        return dates.Select(date => DayOf(date, run, ground, [.. outlooks.Select(o => o.Days.First(d => d.Date == date))]));
    }

    private DecisionDay DayOf(DateOnly date, DayRun run, SeedbedOutlook ground, ImmutableArray<PlantingDay> planting)
    {
        var rain = planting[0].Rain;
        int? dryHours = DryHours.On(date, request.Forecast, request.Zone);
        var reasons = new DayReasons(request, date, ground, dryHours);
        return new()
        {
            Date = date,
            Weather = run.Days.First(d => d.Date == date),
            Rain = rain,
            Little = rain.AtLeast(Length.FromInches(CalendarConstants.All["little-rain"])),
            Enough = planting[0].Enough,
            DryHours = dryHours,
            CanBeWorked = !reasons.IsSoaked && Calendar.DryHours.AreEnough(date, request.Forecast, request.Zone),
            DaysToFrost = KindDates.Of(request.Kinds[0].Kind, date, null, request.Frost).DaysToEarlyFrost,
            LimeDays = request.LimedOn is { } limed && limed <= date ? date.DayNumber - limed.DayNumber : null,
            Kinds = [.. request.Kinds.Select((sown, i) => OnDay(sown, planting[i], ground, reasons))],
        };
    }

    private KindOnDay OnDay(KindToSow sown, PlantingDay day, SeedbedOutlook ground, DayReasons reasons)
    {
        var dates = KindDates.Of(sown.Kind, day.Date, request.Region, request.Frost);
        var (fewest, most) = ground.MoistDays(day.Date, sown.Placement);
        return new()
        {
            Sown = sown,
            Day = day,
            Dates = dates,
            FewestMoistDays = fewest,
            MostMoistDays = most,
            Reasons = reasons.With(sown, day, dates),
        };
    }
}
