namespace PlotAgronomy.Weather;

/// <summary>The lines of one day of a seedbed.</summary>
internal static class SeedbedWork
{
    internal static IEnumerable<WorkedLine> Lines(
        SeedbedDay day,
        (double Readily, double Total) layer,
        double basal,
        WeatherDay weather
    )
    {
        var formulas = WeatherFormulas.All;
        (string, string) date = ("date", DateText.Of(day.Date));
        (string, string) rain = ("rain", Print(day.RainMillimeters));
        (string, string) before = ("depletion before", Print(day.BeforeMillimeters));
        (string, string) start = ("depletion", Print(day.StartMillimeters));
        (string, string) basalPlace = ("basal", Print(basal));
        (string, string) total = ("total", Print(layer.Total));
        var (wind, humidity, height) = SeedbedClimate.Of(weather);
        yield return formulas["weather-greatest-coefficient"]
            .Line(
                Print(day.GreatestCoefficient),
                date,
                ("standard", Print(WeatherConstants.All["greatest-coefficient"])),
                ("wind", Print(wind)),
                ("lowest humidity", Print(humidity)),
                ("height", Print(height)),
                basalPlace
            );
        yield return formulas["weather-depletion-after-rain"].Line($"{Print(day.StartMillimeters)} mm", date, before, rain);
        yield return formulas["weather-percolation"].Line($"{Print(day.PercolationMillimeters)} mm", date, rain, before);
        if (day.StartMillimeters > layer.Readily)
        {
            yield return formulas["weather-wetness-drying"]
                .Line(Print(day.Reduction), date, total, start, ("readily", Print(layer.Readily)));
        }

        yield return formulas["weather-evaporation-coefficient"]
            .Line(
                Print(day.Coefficient),
                date,
                ("wetness", Print(day.Reduction)),
                ("greatest", Print(day.GreatestCoefficient)),
                basalPlace,
                ("exposed", "1")
            );
        yield return formulas["weather-soil-evaporation"]
            .Line(
                $"{Print(day.EvaporationMillimeters)} mm",
                date,
                ("coefficient", Print(day.Coefficient)),
                ("reference", Print(day.ReferenceMillimeters)),
                total,
                start,
                ("exposed", "1")
            );
        yield return formulas["weather-depletion-at-night"]
            .Line(
                $"{Print(day.EndMillimeters)} mm",
                date,
                start,
                ("evaporation", Print(day.EvaporationMillimeters)),
                ("exposed", "1")
            );
    }

    private static string Print(double number) => Amounts.Print(number, 3);
}
