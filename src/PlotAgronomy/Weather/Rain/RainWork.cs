using System.Collections.Immutable;

namespace PlotAgronomy.Weather;

/// <summary>The lines of a sum of rain.</summary>
internal static class RainWork
{
    internal static ImmutableArray<WorkedLine> Lines(ImmutableArray<RainBlock> blocks)
    {
        var lines = ImmutableArray.CreateBuilder<WorkedLine>();
        double strongest = 0,
            independent = 0,
            sum = 0;
        foreach (double chance in blocks.Select(b => b.Chance).OfType<double>().Where(c => c > 0))
        {
            (string, string) period = ("period", Amounts.Print(chance, 3));
            Add("weather-chance-strongest", ref strongest, RainMath.StrongestPeriod);
            Add("weather-chance-independent", ref independent, RainMath.IndependentPeriods);
            Add("weather-chance-sum", ref sum, RainMath.SumOfPeriods);

            void Add(string id, ref double soFar, Func<double, double, double> rule)
            {
                double next = rule(soFar, chance);
                lines.Add(WeatherFormulas.All[id].Line(Amounts.Print(next, 3), ("so far", Amounts.Print(soFar, 3)), period));
                soFar = next;
            }
        }

        if (blocks.Where(b => b is { Chance: > 0, Millimeters: > 0 }).Select(b => (RainBlock?)b).MaxBy(Heaviest) is { } heaviest)
        {
            double mean = RainMath.MeanIfItRains(heaviest.Millimeters!.Value, heaviest.Chance!.Value);
            lines.Add(
                WeatherFormulas
                    .All["weather-rain-rate"]
                    .Line(
                        $"{Amounts.Print(RainMath.Rate(mean, heaviest.Slot.Hours), 2)} mm/h",
                        ("amount", Amounts.Print(mean, 2)),
                        ("hours", Amounts.Print(heaviest.Slot.Hours, 2))
                    )
            );
        }

        return lines.ToImmutable();
    }

    internal static ImmutableArray<WorkedLine> Lines(double millimeters, double chance, double atLeast, RainShape shape)
    {
        if (chance <= 0 || millimeters <= 0)
        {
            return [];
        }

        double mean = RainMath.MeanIfItRains(millimeters, chance);
        (string, string) chancePlace = ("chance", Amounts.Print(chance, 3));
        (string, string) meanPlace = ("mean if it rains", Amounts.Print(mean, 3));
        (string, string) atLeastPlace = ("at least", Amounts.Print(atLeast, 3));
        string answer = Amounts.Print(RainMath.AtLeast(shape, chance, atLeast, millimeters), 3);
        var first = WeatherFormulas
            .All["weather-mean-if-it-rains"]
            .Line($"{Amounts.Print(mean, 3)} mm", ("amount", Amounts.Print(millimeters, 3)), chancePlace);
        var second =
            shape == RainShape.Patchy
                ? WeatherFormulas.All["weather-at-least-patchy"].Line(answer, chancePlace, atLeastPlace, meanPlace)
                : WeatherFormulas
                    .All["weather-at-least-general"]
                    .Line(
                        answer,
                        chancePlace,
                        atLeastPlace,
                        meanPlace,
                        ("shape", Amounts.Print(WeatherConstants.All["general-rain-shape"], 0))
                    );
        return [first, second];
    }

    /// <summary>Lays out the amount exceeded with a chance.</summary>
    internal static WorkedLine Exceeded(double mean, double chance, double wanted) =>
        WeatherFormulas
            .All["weather-exceeded-with"]
            .Line(
                $"{Amounts.Print(RainMath.ExceededWith(mean, chance, wanted), 2)} mm",
                ("mean if it rains", Amounts.Print(mean, 3)),
                ("chance", Amounts.Print(chance, 3)),
                ("wanted chance", Amounts.Print(wanted, 3))
            );

    private static double Heaviest(RainBlock? block) =>
        block!.Value.Millimeters!.Value / block.Value.Chance!.Value / block.Value.Slot.Hours;
}
