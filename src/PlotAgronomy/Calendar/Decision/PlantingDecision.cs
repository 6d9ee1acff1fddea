using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Calendar;

/// <summary>Sow now or wait: the days of a forecast with the parts a person weighs, each kind's verdict, and what waiting
/// costs.</summary>
/// <remarks>No number sums the parts up. The limits of rain are a farmers' rule and common practice; the week is the one in
/// which rain was seen to matter most.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class PlantingDecision
{
    internal PlantingDecision() { }

    /// <summary>Gets what was asked.</summary>
    public required DecisionRequest Request { get; init; }

    /// <summary>Gets the days that the forecast tells whole, in order.</summary>
    public required ImmutableArray<DecisionDay> Days { get; init; }

    /// <summary>Gets the verdict for the first day.</summary>
    public PlantingVerdict Now => Days[0].Verdict;

    /// <summary>Gets the days on which less speaks against sowing than on the first.</summary>
    public ImmutableArray<DecisionDay> BetterDays => [.. Days.Where(d => d.Verdict < Now)];

    /// <summary>Gets the first of the days with the best verdict; null where none is better than the first.</summary>
    public DecisionDay? WaitUntil => BetterDays is { Length: > 0 } better ? better.MinBy(d => (d.Verdict, d.Date)) : null;

    /// <summary>Gets the day just ahead of the rain: the last of the days with the best verdict from which the rain of the week
    /// is as likely as from any of them, for seed that goes on sooner lies dry. Where the ground is worked it is a day on which
    /// it can be: if the rain comes tomorrow, it is today. Null where no rain is in sight, or every such day waits.</summary>
    public DecisionDay? JustAheadOfRain
    {
        get
        {
            var open = Days.Where(d => d.Verdict < PlantingVerdict.Wait && (d.CanBeWorked || !Request.WorksTheGround)).ToList();
            if (!IsRainInSight || open.Count == 0)
            {
                return null;
            }

            var best = open.Min(d => d.Verdict);
            var good = open.Where(d => d.Verdict == best).ToList();
            double likeliest = good.Max(d => d.Enough.Low.Value) - (CalendarConstants.All["as-likely"] / 100);
            return good.Last(d => d.Enough.Low.Value >= likeliest);
        }
    }

    /// <summary>Gets what is not known and would make the decision better.</summary>
    public ImmutableArray<OpenQuestion> Questions => [.. DecisionSum.Questions(Request)];

    /// <summary>Gets a value indicating whether half an inch within a week is as likely as not on some day, by some
    /// rule.</summary>
    public bool IsRainInSight => Days.Any(d => d.Kinds.Any(k => !k.Reasons.Any(r => r.Code == WeatherCodes.RainUnlikely)));

    /// <summary>Gets what waiting costs, from each day to the next.</summary>
    public ImmutableArray<WaitingCost> Costs => [.. Days.Zip(Days.Skip(1), (go, wait) => new WaitingCost
                {
                    Go = go,
                    Wait = wait,
                    DropsOut = [.. Dates.DroppingOut(go.Date, wait.Date).Select(k => k.Kind)],
                })];

    /// <summary>Gets the dates of the kinds, by the first day.</summary>
    public SowingDates Dates =>
        SowingDates.Of([.. Request.Kinds.Select(k => k.Kind)], Days[0].Date, Request.Region, Request.Frost);

    /// <summary>Gets the kinds for which waiting still leaves time, the first to drop out leading; each with its last sensible
    /// day.</summary>
    public ImmutableArray<KindDates> TimeLeft => [.. Dates.DropOut.Where(k => k.LastSensible >= Days[0].Date)];

    /// <summary>Gets the remarks on forecast, ground and estimates, most serious first.</summary>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(
            Remarks
                .Concat(Request.Forecast.Findings)
                .Concat(
                    Days[0].Kinds.SelectMany(k => k.Day.Emergence.Findings).Where(f => f.Code == WeatherCodes.SoilIsEstimated)
                )
        );

    /// <summary>What was taken for a fact that is not known.</summary>
    internal ImmutableArray<Finding> Remarks { get; init; } = [];

    /// <summary>Weighs the days of a forecast.</summary>
    /// <param name="request">What is to be sown, and what is known.</param>
    /// <returns>The decision; open where the forecast tells no whole day, the place is not known, or a kind has no
    /// clock.</returns>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public static Answer<PlantingDecision> Of(DecisionRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var weighed = new DecisionSum(request).Answer();
        if (!weighed.TryGet(out var days))
        {
            return Answers.Open<PlantingDecision>(() => weighed.Questions);
        }

        var decision = new PlantingDecision
        {
            Request = request,
            Days = days.Days,
            Remarks = days.Remarks,
        };
        return Answers.Given(decision, () => decision.Findings, () => decision.Questions);
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        WaitUntil is { } better
            ? $"{PlantingDay.VerdictWords[Now]}; better on {CalendarText.Date(better.Date)}"
            : PlantingDay.VerdictWords[Now];
}
