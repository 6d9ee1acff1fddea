using System.Globalization;
using System.Text.RegularExpressions;

namespace PlotAgronomy.Land;

/// <summary>A pace as its owner writes it: <c>2.5 ft</c>, <c>100 ft in 40 paces</c>, <c>300 ft in 118, 120 and 121 paces</c>; and
/// lengths counted in it.</summary>
internal static partial class PaceText
{
    internal const string Examples = "'100 ft in 40 paces' or '2.5 ft'";

    internal static bool TryRead(string? text, out PaceCalibration? pace, out string problem)
    {
        pace = null;
        if (Walked().Match(text ?? "") is not { Success: true } walked)
        {
            bool isStated = Amounts.TryReadLength(text, out var step, out problem);
            problem = isStated ? "" : $"expected a pace such as {Examples}, found '{text}'";
            double feet = step.Feet;
            if (isStated && !(feet > 0))
            {
                problem = $"a pace is above zero, found '{text}'";
            }

            pace = problem.Length == 0 ? PaceCalibration.FromStep(step) : null;
            return pace is not null;
        }

        if (!Amounts.TryReadLength(walked.Groups["course"].Value, out var course, out problem))
        {
            return false;
        }

        double[] counts =
        [
            .. Number().Matches(walked.Groups["counts"].Value).Select(n => double.Parse(n.Value, CultureInfo.InvariantCulture)),
        ];
        double courseFeet = course.Feet;
        if (!(courseFeet > 0) || counts.Any(c => !(c > 0 && double.IsFinite(c))))
        {
            problem = $"the course and every count are numbers above zero, found '{text}'";
            return false;
        }

        bool isDouble = walked.Groups["double"].Success;
        pace = PaceCalibration.FromWalks(
            course,
            [.. counts.Select(c => isDouble ? StepCount.FromDoublePaces(c) : StepCount.FromSingleSteps(c))]
        );
        return true;
    }

    internal static string Print(PaceCalibration pace) =>
        pace.Walks.IsEmpty
            ? Amounts.Print(pace.Step)
            : $"{Amounts.Print(pace.Course)} in {string.Join(", ", pace.Walks.Select(w => ExactText.Of(w.SingleSteps)))} paces";

    /// <summary>Whether a length is counted in paces, and how many single steps it has.</summary>
    internal static bool TryReadCount(string? text, out StepCount count)
    {
        var counted = Counted().Match(text ?? "");
        count = default;
        if (
            !counted.Success
            || !double.TryParse(counted.Groups["count"].Value, CultureInfo.InvariantCulture, out double paces)
            || !double.IsFinite(paces)
        )
        {
            return false;
        }

        count = counted.Groups["double"].Success ? StepCount.FromDoublePaces(paces) : StepCount.FromSingleSteps(paces);
        return true;
    }

    [GeneratedRegex(
        @"^\s*(?<course>.+?)\s+in\s+"
            + @"(?<counts>[0-9.]+(?:\s*(?:,|and|,\s*and)\s*[0-9.]+)*)\s+(?<double>double\s+)?(?:paces?|steps?)\s*$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Walked();

    [GeneratedRegex(@"[0-9]+(?:\.[0-9]+)?|\.[0-9]+")]
    private static partial Regex Number();

    [GeneratedRegex(
        @"^\s*(?<count>[0-9]{1,9}(?:\.[0-9]+)?)\s*(?<double>double\s+)?(?:paces?|steps?)\s*$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Counted();
}
