using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Soil;

/// <summary>Plausibility of the sample itself: its age and its depth.</summary>
internal static class SampleChecks
{
    internal static IEnumerable<Finding> OfAge(SoilReport report, DateOnly today)
    {
        if (report.SampledOn is not { } day)
        {
            yield return FindingCatalog.Create(SoilCodes.ReportUndated);
        }
        else if (day > today)
        {
            yield return FindingCatalog.Create(SoilCodes.ReportFromFuture, ("date", Date(day)), ("today", Date(today)));
        }
        else if (day.AddYears((int)SoilConstants.All["report-age-high"]) < today)
        {
            yield return FindingCatalog.Create(SoilCodes.ReportOld, ("date", Date(day)), ("years", Years(day, today)));
        }
    }

    internal static IEnumerable<Finding> Of(SoilReport report, DateOnly? today)
    {
        foreach (var finding in today is { } day ? OfAge(report, day) : [])
        {
            yield return finding;
        }

        if (SoilProgram.For(report) is { SampledDepthInches: { } programDepth } program)
        {
            foreach (var finding in OfDepth(report, programDepth, program.Institution.Name))
            {
                yield return finding;
            }
        }
        else if (report.SampledDepth is { } depth)
        {
            double inches = depth.Inches;
            if (inches < SoilConstants.All["sample-depth-low"])
            {
                yield return FindingCatalog.Create(SoilCodes.SampleShallow, ("sampled", Inches(inches)));
            }
            else if (inches > SoilConstants.All["sample-depth-high"])
            {
                yield return FindingCatalog.Create(SoilCodes.SampleDeep, ("sampled", Inches(inches)));
            }
        }
    }

    internal static ImmutableArray<Finding> OfDepth(SoilReport report, double expectedInches, string method)
    {
        if (report.SampledDepth is not { } depth)
        {
            return [];
        }

        double inches = depth.Inches;
        return Math.Abs(inches - expectedInches) > SoilConstants.All["sample-depth-tolerance"]
            ?
            [
                FindingCatalog.Create(
                    SoilCodes.DepthDiffers,
                    ("sampled", Inches(inches)),
                    ("method", method),
                    ("expected", Inches(expectedInches))
                ),
            ]
            : [];
    }

    private static string Inches(double inches) => Amounts.Print(Length.FromInches(inches), "in", 1);

    private static string Date(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Years(DateOnly from, DateOnly to) =>
        Amounts.Print((to.DayNumber - from.DayNumber) / ExactUnits.DaysPerYear, 1);
}
