using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>Degree days over a stretch of days, by a named method.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class DegreeDays : IWorkedResult
{
    private readonly ImmutableArray<WeatherDay> days;
    private readonly double @base;
    private readonly double? upper;

    private DegreeDays(ImmutableArray<WeatherDay> days, double @base, double? upper, DegreeDayMethod method)
    {
        this.days = days;
        this.@base = @base;
        this.upper = upper;
        Method = method;
        SumCelsius = days.Sum(OfDay);
    }

    /// <summary>Gets the method.</summary>
    public DegreeDayMethod Method { get; }

    /// <summary>Gets the sum in C days.</summary>
    public double SumCelsius { get; }

    /// <summary>Gets the sum in F days.</summary>
    public double SumFahrenheit => SumCelsius * 1.8;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => [];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => WeatherFormulas.All.SourcesOf(FormulaId);

    private string FormulaId =>
        Method switch
        {
            DegreeDayMethod.SimpleAverage => "weather-degree-days-simple",
            DegreeDayMethod.Clipped => "weather-degree-days-clipped",
            _ => "weather-degree-days-sine",
        };

    /// <summary>Sums degree days.</summary>
    /// <param name="days">Days.</param>
    /// <param name="baseTemperature">Temperature below which nothing grows.</param>
    /// <param name="method">Method.</param>
    /// <param name="upperLimit">Temperature above which more heat does not count; none where it is left out, and for the simple
    /// average.</param>
    /// <returns>The sum; open where the high or low of a day is not known.</returns>
    /// <exception cref="ArgumentException">No day, an unknown method, or a limit that is not above the base.</exception>
    public static Answer<DegreeDays> Of(
        IReadOnlyList<WeatherDay> days,
        Temperature baseTemperature,
        DegreeDayMethod method,
        Temperature? upperLimit = null
    )
    {
        Guard.NotEmpty(days);
        Guard.Defined(method);
        double celsius = baseTemperature.DegreesCelsius;
        double? limit = upperLimit is { DegreesCelsius: var degrees }
            ? Guard.Above(degrees, celsius, "C", nameof(upperLimit))
            : null;
        var unknown = days.FirstOrDefault(d => d.MeanCelsius is null);
        return unknown is null
            ? Answers.Given(new DegreeDays([.. days], celsius, limit, method))
            : Answers.Open<DegreeDays>(() => [WeatherQuestions.Temperatures(DateText.Of(unknown.Date))]);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [.. days.Select(Line)];

    private double OfDay(WeatherDay day) =>
        DegreeDayMath.OfDay(Method, day.HighCelsius!.Value, day.LowCelsius!.Value, @base, upper);

    private WorkedLine Line(WeatherDay day)
    {
        double high = day.HighCelsius!.Value,
            low = day.LowCelsius!.Value,
            mean = (high + low) / 2;
        string answer = $"{Print(OfDay(day))} C days";
        (string, string) date = ("date", DateText.Of(day.Date));
        (string, string) highPlace = ("high", Print(high));
        (string, string) lowPlace = ("low", Print(low));
        (string, string) basePlace = ("base", Print(@base));
        if (Method == DegreeDayMethod.Clipped)
        {
            string limit = Print(upper ?? Math.Max(high, @base));
            return WeatherFormulas
                .All["weather-degree-days-clipped"]
                .Line(answer, date, highPlace, lowPlace, basePlace, ("upper", limit));
        }

        if (Method == DegreeDayMethod.SingleSine && upper < high)
        {
            return WeatherFormulas
                .All["weather-degree-days-cut"]
                .Line(
                    answer,
                    date,
                    ("above the base", Print(DegreeDayMath.SingleSine(high, low, @base))),
                    ("above the limit", Print(DegreeDayMath.SingleSine(high, low, upper.Value)))
                );
        }

        if (Method == DegreeDayMethod.SimpleAverage || low >= @base || high <= @base)
        {
            return WeatherFormulas.All["weather-degree-days-simple"].Line(answer, date, highPlace, lowPlace, basePlace);
        }

        double swing = (high - low) / 2;
        double angle = Math.Asin((@base - mean) / swing);
        return WeatherFormulas
            .All["weather-degree-days-sine"]
            .Line(
                answer,
                date,
                ("mean", Print(mean)),
                basePlace,
                ("half pi", Print(Math.PI / 2)),
                ("angle", Print(angle)),
                ("swing", Print(swing)),
                ("cosine of the angle", Print(Math.Cos(angle)))
            );
    }

    private static string Print(double number) => Amounts.Print(number, 3);

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
