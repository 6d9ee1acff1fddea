using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using PlotAgronomy.Land;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Planning;

/// <summary>The dates of a plan: its season, and its day of sowing by a forecast that was handed in.</summary>
public static class PlanTiming
{
    extension(PlotAnswers answers)
    {
        /// <summary>Gets what the dates make of the kinds: printed windows, frost, first forage, last sensible days.</summary>
        public Answer<SowingDates> Dates => TimingSolver.Dates(Guard.NotNull(answers).Plan);

        /// <summary>Gets the tasks of the season with their days, and in words where a day is not known; not needed where there
        /// is no work at all.</summary>
        public Answer<SeasonCalendar> Calendar => SeasonSolver.Solve(Guard.NotNull(answers));

        /// <summary>Gets all the work of the plan in its order, with what is spread in each task.</summary>
        public ImmutableArray<SeasonWork> SeasonWork =>
            SeasonSolver.Solve(Guard.NotNull(answers)).TryGet(out var season) ? Planning.SeasonWork.Of(answers, season) : [];
    }

    /// <summary>The place that sun and evaporation are reckoned for.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="forecast">Forecast whose document may tell the place, or null.</param>
    /// <returns>The place; open, with the question for it, where neither plan nor forecast tells one.</returns>
    /// <exception cref="ArgumentNullException">No plan.</exception>
    public static Answer<GeoPoint> WhereItLies(this PlotPlan plan, WeatherForecast? forecast = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return PlacePoint.Of(TimingSolver.Where(plan), forecast, plan.Plot.Place) is { Point: var point }
            ? Answers.Given(point)
            : Answers.Open<GeoPoint>(() => [CalendarQuestions.Where()]);
    }

    /// <summary>The clock by the sun of the plot, in whole hours and without summer time: near enough to part the days where
    /// no time zone is at hand.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="forecast">Forecast whose document may tell the place, or null.</param>
    /// <returns>The zone; universal time where no place is known.</returns>
    /// <exception cref="ArgumentNullException">No plan.</exception>
    public static TimeZoneInfo ZoneOf(this PlotPlan plan, WeatherForecast? forecast = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return SunClock.Of(PlacePoint.Of(TimingSolver.Where(plan), forecast, plan.Plot.Place)?.Point);
    }

    /// <summary>Weighs the days of a forecast for a plan.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="forecast">Forecast.</param>
    /// <param name="zone">Time zone of the plot, whose days are counted.</param>
    /// <param name="observed">Weather observed up to the forecast, or null. Years of it tell the first freeze where the plan
    /// does not.</param>
    /// <returns>The decision; open where the forecast tells no whole day, the place is not known, or a kind has no
    /// clock; not asked where nothing is sown.</returns>
    /// <exception cref="ArgumentNullException">No plan, forecast or zone.</exception>
    public static Answer<PlantingDecision> When(
        this PlotPlan plan,
        WeatherForecast forecast,
        TimeZoneInfo zone,
        WeatherHistory? observed = null
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(forecast);
        ArgumentNullException.ThrowIfNull(zone);
        if (plan.Kinds.IsEmpty)
        {
            return Answers.NotAsked<PlantingDecision>();
        }

        var soil = plan.Soil;
        ImmutableArray<CropKind> held = HeldBack.Of(TimingSolver.Kinds(plan), soil);
        var known =
            plan.Season is { Frost: null, Station: null } or null && observed is { Days.Length: > 0 } years
                ? plan with
                {
                    Season = (plan.Season ?? new()) with { Station = years },
                }
                : plan;
        return PlantingDecision.Of(
            new()
            {
                Kinds =
                [
                    .. plan.Kinds.Select(k => new KindToSow
                    {
                        Kind = k.Kind,
                        Placement = SeedPlacing.Of(k.Kind, plan.Method),
                        WaitsForPh = held.Contains(k.Kind) ? k.Kind.LowestPhOn(soil) : null,
                    }),
                ],
                Forecast = forecast,
                Observed = observed,
                Zone = zone,
                Where = TimingSolver.Where(plan),
                Place = plan.Plot.Place,
                Texture = soil.Texture,
                Region = plan.Plot.PlantingRegion,
                Frost = TimingSolver.Frost(known).TryGet(out var frost) ? frost : null,
                LimedOn = plan.LimeDate,
                WorksTheGround = !plan.IsUnworked,
            }
        );
    }
}
