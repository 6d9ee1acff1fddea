using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>Dates of the first freeze of autumn, by years that were observed or by published quantiles.</summary>
/// <remarks>Dates are taken as normal about their mean; a share of years may have no freeze by the end of the year.
/// Temperatures are
/// those of a screen at head height: grass is several degrees colder on a clear night.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class FrostDates : IWorkedResult
{
    private readonly (double Early, double Middle, double Late)? quantiles;

    private FrostDates(double celsius, double mean, double spread, double yearsWithout, ImmutableArray<FrostSeason> seasons)
    {
        Threshold = Temperature.FromDegreesCelsius(celsius);
        Mean = mean;
        Spread = spread;
        YearsWithout = yearsWithout;
        Seasons = seasons;
    }

    private FrostDates(double celsius, (double Early, double Middle, double Late) quantiles, Origin origin)
        : this(
            celsius,
            quantiles.Middle,
            FrostMath.SpreadFromTails(quantiles.Late, quantiles.Early, FrostMath.DeviationsBetweenTails),
            0,
            []
        )
    {
        this.quantiles = quantiles;
        QuantilesFrom = origin;
    }

    /// <summary>Gets the temperature that counts as a freeze.</summary>
    public Temperature Threshold { get; }

    /// <summary>Gets the dates of the years that were observed, none for a year without a freeze; empty for published
    /// quantiles.</summary>
    public ImmutableArray<DateOnly> Observed => [.. Seasons.Select(s => s.First).OfType<DateOnly>()];

    /// <summary>Gets the number of autumns that were observed; 0 for published quantiles.</summary>
    public int Years => Seasons.Length;

    /// <summary>Gets where published quantiles come from; null for years that were observed.</summary>
    public Origin? QuantilesFrom { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings
    {
        get
        {
            var remarks = new List<Finding>();
            int enough = (int)WeatherConstants.All["years-enough"];
            if (quantiles is null && Years < enough)
            {
                remarks.Add(
                    FindingCatalog.Create(WeatherCodes.FewYears, ("years", DateText.Of(Years)), ("enough", DateText.Of(enough)))
                );
            }

            if (YearsWithout > 0)
            {
                string without = DateText.Of(Seasons.Count(s => s.First is null));
                remarks.Add(
                    FindingCatalog.Create(WeatherCodes.YearsWithoutFreeze, ("count", without), ("years", DateText.Of(Years)))
                );
            }

            return Finding.InOrder(remarks);
        }
    }

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [.. WeatherFormulas.All.SourcesOf("weather-frost-date").Concat(QuantilesFrom?.Sources ?? []).Distinct()];

    /// <summary>The mean as a day of a common year.</summary>
    internal double Mean { get; }

    internal double Spread { get; }

    internal double YearsWithout { get; }

    internal ImmutableArray<FrostSeason> Seasons { get; }

    /// <summary>Finds the first freezes of a history: the first day from late July to the end of the year whose low is at or
    /// below the
    /// threshold.</summary>
    /// <param name="history">Observed weather of several autumns.</param>
    /// <param name="threshold">Temperature that counts as a freeze: 32 F a freeze, 28 F a hard freeze.</param>
    /// <returns>The dates; open where fewer than two autumns have a freeze, or all on one date.</returns>
    public static Answer<FrostDates> FromHistory(WeatherHistory history, Temperature threshold)
    {
        ArgumentNullException.ThrowIfNull(history);
        double celsius = threshold.DegreesCelsius;
        ImmutableArray<FrostSeason> seasons = [.. FrostSeason.Of(history, celsius)];
        double[] days = [.. seasons.Select(s => s.First).OfType<DateOnly>().Select(d => (double)YearDay.Of(d))];
        if (days.Distinct().Count() < 2)
        {
            return Answers.Open<FrostDates>(() => [WeatherQuestions.FirstFreeze(CelsiusText.Of(threshold))]);
        }

        double mean = days.Average();
        double without = 1 - ((double)days.Length / seasons.Length);
        var dates = new FrostDates(celsius, mean, FrostMath.Spread(days, mean), without, seasons);
        return Answers.Given(dates, () => dates.Findings);
    }

    /// <summary>Takes published quantiles of the first freeze.</summary>
    /// <param name="threshold">Temperature that counts as a freeze.</param>
    /// <param name="early">Date by which it came in 10 % of years.</param>
    /// <param name="middle">Date by which it came in half of the years.</param>
    /// <param name="late">Date by which it came in 90 % of years.</param>
    /// <param name="detail">Where the dates were read.</param>
    /// <returns>The dates.</returns>
    /// <exception cref="ArgumentException">Dates that are not in this order.</exception>
    public static FrostDates FromQuantiles(
        Temperature threshold,
        DateOnly early,
        DateOnly middle,
        DateOnly late,
        string detail = "published normals of a station nearby"
    )
    {
        double celsius = threshold.DegreesCelsius;
        (double Early, double Middle, double Late) days = (YearDay.Of(early), YearDay.Of(middle), YearDay.Of(late));
        return days.Early < days.Middle && days.Middle < days.Late
            ? new(celsius, days, Origin.FromUser(detail))
            : throw new ArgumentException("Must be dates of one autumn, early, middle, late.", nameof(middle));
    }

    /// <summary>The date by which the first freeze comes with a chance.</summary>
    /// <param name="chance">Chance, above 0 and below certain: 10 % is an early date.</param>
    /// <param name="year">Year that the date is wanted in.</param>
    /// <returns>The date: the printed one where this chance is printed; null where a freeze is not that likely by the end of
    /// the year.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A chance of 0 or certain, or a year no calendar has.</exception>
    public DateOnly? DateWith(Fraction chance, int year)
    {
        Guard.Inside(chance.Value, 0, 1, "(a chance)", nameof(chance));
        YearDay.Checked(year);
        return DayWith(chance.Value) is { } day ? YearDay.In(year, day) : null;
    }

    /// <summary>The chance that the first freeze comes by a date.</summary>
    /// <param name="date">Date of an autumn.</param>
    /// <returns>The chance.</returns>
    public Fraction ChanceBy(DateOnly date) =>
        Fraction.FromValue(FrostMath.ChanceBy(YearsWithout, YearDay.Of(date), Mean, Spread));

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        double tail = WeatherConstants.All["early-frost-chance"] / 100;
        double deviations = FrostMath.Deviations(tail);
        var date = WeatherFormulas
            .All["weather-frost-date"]
            .Line(
                $"day {Print(FrostMath.DateWith(Mean, deviations, Spread))} of the year",
                ("mean", Print(Mean)),
                ("deviations", Amounts.Print(deviations, 4)),
                ("spread", Print(Spread))
            );
        return quantiles is { } q
            ?
            [
                WeatherFormulas
                    .All["weather-frost-spread"]
                    .Line(
                        $"{Print(Spread)} days",
                        ("late", Print(q.Late)),
                        ("early", Print(q.Early)),
                        ("deviations between", Amounts.Print(FrostMath.DeviationsBetweenTails, 4))
                    ),
                date,
            ]
            : [date];
    }

    /// <summary>Day of a common year; a printed quantile goes before the normal rule.</summary>
    internal double? DayWith(double chance)
    {
        double tail = WeatherConstants.All["early-frost-chance"] / 100;
        if (quantiles is { } q && (chance == tail || chance == 0.5 || chance == 1 - tail))
        {
            return chance == tail ? q.Early
                : chance == 0.5 ? q.Middle
                : q.Late;
        }

        double among = chance / (1 - YearsWithout);
        double? day = among < 1 ? FrostMath.DateWith(Mean, FrostMath.Deviations(among), Spread) : null;
        return day is >= 1 and < YearDay.Days + 1 ? day : null;
    }

    private static string Print(double number) => Amounts.Print(number, 1);

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
