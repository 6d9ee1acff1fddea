using System.Collections.Immutable;

namespace PlotAgronomy.Weather;

/// <summary>The lines of an emergence clock.</summary>
internal static class EmergenceWork
{
    internal static ImmutableArray<WorkedLine> Lines(
        ThermalTime? rule,
        double depth,
        double meanCelsius,
        ImmutableArray<EmergenceDay> moist
    )
    {
        if (rule is null)
        {
            return [];
        }

        var formulas = WeatherFormulas.All;
        (string, string) basePlace = ("base", Print(rule.BaseCelsius));
        var lines = ImmutableArray.CreateBuilder<WorkedLine>();
        if (rule.DegreeDaysPerMillimeter > 0)
        {
            lines.Add(
                formulas["weather-thermal-time-at-depth"]
                    .Line(
                        $"{Print(rule.At(depth))} C days",
                        ("at the surface", Print(rule.DegreeDays)),
                        ("per mm", Print(rule.DegreeDaysPerMillimeter)),
                        ("depth", Print(depth))
                    )
                    .From(rule.Origin)
            );
        }

        if (meanCelsius > rule.BaseCelsius)
        {
            lines.Add(
                formulas["weather-days-needed"]
                    .Line(
                        $"{Print(EmergenceMath.DaysNeeded(rule.At(depth), meanCelsius, rule.BaseCelsius))} moist days",
                        ("thermal time", Print(rule.At(depth))),
                        ("temperature", Print(meanCelsius)),
                        basePlace
                    )
                    .From(rule.Origin)
            );
        }

        lines.AddRange(moist.Where(d => d.SoilCelsius > rule.BaseCelsius).Select(d => OfDay(rule, d)));
        return lines.ToImmutable();
    }

    private static WorkedLine OfDay(ThermalTime rule, EmergenceDay day)
    {
        string answer = $"{Print(rule.OfDay(day.SoilCelsius))} C days";
        (string, string) date = ("date", DateText.Of(day.Date));
        (string, string) temperature = ("temperature", Print(day.SoilCelsius));
        (string, string) basePlace = ("base", Print(rule.BaseCelsius));
        return rule is { BestCelsius: { } best, HighestCelsius: { } highest } && day.SoilCelsius > best
            ? WeatherFormulas
                .All["weather-thermal-falling"]
                .Line(answer, date, ("best", Print(best)), basePlace, ("highest", Print(highest)), temperature)
            : WeatherFormulas.All["weather-thermal-rising"].Line(answer, date, temperature, basePlace);
    }

    private static string Print(double number) => Amounts.Print(number, 2);
}
