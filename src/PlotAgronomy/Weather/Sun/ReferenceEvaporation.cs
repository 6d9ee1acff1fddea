using System.Collections.Immutable;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>Water that short grass, well watered, would give off in a day: FAO Penman-Monteith where humidity, wind and sun are
/// known, else Hargreaves from the temperatures.</summary>
/// <remarks>Not considered: shade, slope and shelter of the plot. In a humid state Hargreaves was off by 0.7 mm a day on the
/// mean.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class ReferenceEvaporation : IWorkedResult
{
    private readonly PenmanMonteithDay? full;
    private readonly GeoPoint place;
    private readonly SunDay sun;
    private readonly double high;
    private readonly double low;

    private ReferenceEvaporation(GeoPoint place, WeatherDay day, double high, double low, double elevation, double coefficient)
    {
        this.place = place;
        this.high = high;
        this.low = low;
        Date = day.Date;
        sun = new SunDay(place, day.Date.DayOfYear);
        full = PenmanMonteithDay.Of(day, sun, elevation, coefficient);
        Millimeters = full?.Millimeters ?? ByHargreaves();
    }

    /// <summary>Gets the date.</summary>
    public DateOnly Date { get; }

    /// <summary>Gets the depth of water.</summary>
    public Length Depth => Length.FromMillimeters(Millimeters);

    /// <summary>Gets the method that the known data allow.</summary>
    public EvaporationMethod Method => full is null ? EvaporationMethod.Hargreaves : EvaporationMethod.PenmanMonteith;

    /// <summary>Gets the time from sunrise to sunset.</summary>
    public TimeSpan DayLength => TimeSpan.FromHours(sun.DayLengthHours);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings
    {
        get
        {
            var remarks = new List<Finding>();
            if (full is null)
            {
                string off = $"{Amounts.Print(WeatherConstants.All["hargreaves-off"], 2)} mm";
                remarks.Add(FindingCatalog.Create(WeatherCodes.FromTemperatures, ("off", off)));
            }
            else if (full.SolarIsEstimated)
            {
                remarks.Add(FindingCatalog.Create(WeatherCodes.SunFromRange));
            }

            if (full is { SunshineIsTooLong: true })
            {
                string length = $"{Amounts.Print(sun.DayLengthHours, 1)} h";
                remarks.Add(FindingCatalog.Create(WeatherCodes.SunshineTooLong, ("length", length)));
            }

            if (Math.Abs(place.LatitudeDegrees) > WeatherConstants.All["highest-latitude"])
            {
                string limit = Amounts.Print(WeatherConstants.All["highest-latitude"], 0);
                remarks.Add(FindingCatalog.Create(WeatherCodes.FarFromEquator, ("limit", limit)));
            }

            return Finding.InOrder(remarks);
        }
    }

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        WeatherFormulas.All.SourcesOf(full is null ? ["weather-hargreaves"] : ["weather-penman-monteith"]);

    internal double Millimeters { get; }

    /// <summary>Finds the reference evaporation of a day.</summary>
    /// <param name="place">Place.</param>
    /// <param name="day">Weather of the day.</param>
    /// <param name="elevation">Height above the sea; sea level where it is left out, which changes little below 1,000 ft.</param>
    /// <param name="isNearCoast">Whether the place lies on a coast: the sun is then estimated from the temperatures by the figure
    /// for coasts.</param>
    /// <returns>The evaporation; open where high or low is not known.</returns>
    public static Answer<ReferenceEvaporation> Of(
        GeoPoint place,
        WeatherDay day,
        Length? elevation = null,
        bool isNearCoast = false
    )
    {
        ArgumentNullException.ThrowIfNull(day);
        if (day is not { HighCelsius: { } high, LowCelsius: { } low } || high < low)
        {
            string date = DateText.Of(day.Date);
            return Answers.Open<ReferenceEvaporation>(() => [WeatherQuestions.Temperatures(date)]);
        }

        double meters = elevation is { Meters: var known }
            ? Guard.Between(known, WeatherRanges.LowestGround, WeatherRanges.HighestGround, "m", nameof(elevation))
            : 0;
        double coefficient = WeatherConstants.All[isNearCoast ? "sun-range-coast" : "sun-range-inland"];
        var evaporation = new ReferenceEvaporation(place, day, high, low, meters, coefficient);
        return Answers.Given(evaporation, () => evaporation.Findings);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [.. sun.Lines(), .. full?.Lines() ?? [HargreavesLine()]];

    private double Depths => WeatherConstants.All["depth-of-radiation"] * sun.Extraterrestrial;

    private double ByHargreaves() =>
        AirMath.Hargreaves(
            WeatherConstants.All["hargreaves-factor"],
            (high + low) / 2,
            WeatherConstants.All["hargreaves-shift"],
            high,
            low,
            Depths
        );

    private WorkedLine HargreavesLine() =>
        WeatherFormulas
            .All["weather-hargreaves"]
            .Line(
                $"{Amounts.Print(Millimeters, 2)} mm",
                ("factor", Amounts.Print(WeatherConstants.All["hargreaves-factor"], 4)),
                ("mean", Amounts.Print((high + low) / 2, 2)),
                ("shift", Amounts.Print(WeatherConstants.All["hargreaves-shift"], 1)),
                ("high", Amounts.Print(high, 1)),
                ("low", Amounts.Print(low, 1)),
                ("extraterrestrial as water", Amounts.Print(Depths, 2))
            );

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
