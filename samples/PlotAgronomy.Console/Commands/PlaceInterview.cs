using System.Globalization;
using PlotAgronomy.Land;
using PlotAgronomy.Planning;

namespace PlotAgronomy.Sample.Commands;

/// <summary>Asks where the plot lies, before anything else is typed, where the plan does not say.</summary>
internal sealed class PlaceInterview(TextReader answers, TextWriter output)
{
    /// <summary>Whether the place is known in the end; a line says so where it is not.</summary>
    internal bool TryPlace(ref PlotPlan plan, Action<string> say)
    {
        if (IsKnown(plan))
        {
            return true;
        }

        output.WriteLine("In which state does the plot lie, or at which latitude and longitude?");
        output.WriteLine("Such as: Ohio, or 40.1 -82.9. Days, sun and evaporation go by it.");
        while (answers.ReadLine() is { } text && !string.IsNullOrWhiteSpace(text))
        {
            if (TryRead(plan, text, out var placed, out string problem))
            {
                plan = placed;
                output.WriteLine();
                return true;
            }

            output.WriteLine($"  {problem}");
        }

        say("no place was told: name the state, or latitude and longitude");
        return false;
    }

    private static bool IsKnown(PlotPlan plan) => plan.WhereItLies().State == AnswerState.Given;

    private static bool TryRead(PlotPlan plan, string text, out PlotPlan placed, out string problem)
    {
        placed = plan;
        string[] words = text.Split([' ', ',', ';', '\t'], StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 2 && TryNumber(words[0], out double latitude) && TryNumber(words[1], out double longitude))
        {
            problem =
                latitude is not (>= -66 and <= 66) ? "a latitude is from -66 to 66 degrees"
                : longitude is not (>= -180 and <= 180) ? "a longitude is from -180 to 180 degrees, west of Greenwich negative"
                : "";
            if (problem.Length > 0)
            {
                return false;
            }

            placed = plan with { Season = (plan.Season ?? new()) with { Where = GeoPoint.FromDegrees(latitude, longitude) } };
            return true;
        }

        if (!Place.TryFind(text.Trim(), out var place, out _))
        {
            problem = $"no state is called '{text.Trim()}': its name in full, or latitude and longitude such as 40.1 -82.9";
            return false;
        }

        placed = plan with { Plot = plan.Plot with { Place = place } };
        problem = $"the middle of {place.Name} is not known here: give latitude and longitude";
        return IsKnown(placed);
    }

    private static bool TryNumber(string text, out double number) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out number);
}
