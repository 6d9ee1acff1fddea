using System.Globalization;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Sample.Commands;

/// <summary>Asks a forecast day by day, as any forecast prints it: at most seven lines.</summary>
internal sealed class ForecastInterview(TextReader answers, TextWriter output)
{
    private const int MostLines = 7;

    /// <summary>The forecast; null, with a line that says so, where nothing was typed.</summary>
    internal WeatherForecast? Ask(DateOnly first, TimeZoneInfo zone, Action<string> say)
    {
        output.WriteLine("Type the forecast, a day a line: chance of rain in %, amount in inches, high and low in F.");
        output.WriteLine("Such as: 60 0.4 78 55. At most seven days; a blank line ends it.");
        var lines = new List<TypedForecastLine>();
        while (lines.Count < MostLines)
        {
            var date = first.AddDays(lines.Count);
            output.WriteLine($"{date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}:");
            string? text = answers.ReadLine();
            if (string.IsNullOrWhiteSpace(text))
            {
                break;
            }

            if (TryRead(date, text, out var line, out string problem))
            {
                lines.Add(line!);
            }
            else
            {
                output.WriteLine($"  {problem}");
            }
        }

        output.WriteLine();
        if (lines.Count == 0)
        {
            say("no day of a forecast was typed");
            return null;
        }

        return WeatherForecast.FromLines(lines, zone);
    }

    private static bool TryRead(DateOnly date, string text, out TypedForecastLine? line, out string problem)
    {
        line = null;
        problem = "";
        string[] words = text.Replace("%", " ", StringComparison.Ordinal)
            .Split([' ', ',', ';', '\t', '/'], StringSplitOptions.RemoveEmptyEntries);
        double[] numbers = new double[4];
        if (words.Length != numbers.Length)
        {
            problem = "four numbers are wanted: chance, amount, high, low";
            return false;
        }

        for (int i = 0; i < numbers.Length; i++)
        {
            if (!double.TryParse(words[i], NumberStyles.Float, CultureInfo.InvariantCulture, out numbers[i]))
            {
                problem = $"'{words[i]}' is no number";
                return false;
            }
        }

        problem = Problem(numbers[0], numbers[1], numbers[2], numbers[3]);
        if (problem.Length > 0)
        {
            return false;
        }

        line = new()
        {
            Date = date,
            Chance = Fraction.FromPercent(numbers[0]),
            Rain = Length.FromInches(numbers[1]),
            High = Temperature.FromDegreesFahrenheit(numbers[2]),
            Low = Temperature.FromDegreesFahrenheit(numbers[3]),
        };
        return true;
    }

    private static string Problem(double chance, double amount, double high, double low) =>
        chance is not (>= 0 and <= 100) ? "a chance is from 0 to 100 %"
        : amount is not (>= 0 and <= 40) ? "an amount is from 0 to 40 inches"
        : high is not (>= -100 and <= 140) || low is not (>= -100 and <= 140) ? "a temperature is from -100 to 140 F"
        : low > high ? "the low is above the high"
        : "";
}
