using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Weather;

/// <summary>What to be careful about until a kind is up.</summary>
internal static class EmergenceRemarks
{
    internal static ImmutableArray<Finding> Of(EmergenceCourse course)
    {
        string kind = course.Kind.ShortName;
        var remarks = new List<Finding> { FindingCatalog.Create(WeatherCodes.SoilIsEstimated) };
        if (course.ThermalTime is null)
        {
            remarks.Add(FindingCatalog.Create(WeatherCodes.PrintedDaysCounted, ("kind", kind)));
        }

        if ((course.ThermalTime?.Origin ?? course.Kind.Emergence?.Evidence) is { Status: DataStatus.Memory } origin)
        {
            remarks.Add(MemoryGate.FindingFor($"emergence of {kind}", origin));
        }

        if (course.ColdDays > 0)
        {
            remarks.Add(
                FindingCatalog.Create(
                    WeatherCodes.SoilTooCold,
                    ("kind", kind),
                    ("count", DateText.Of(course.ColdDays)),
                    ("least", CelsiusText.OfCelsius(course.LeastCelsius!.Value))
                )
            );
        }

        if (course.DryDaysAfterSprouting > 0)
        {
            string count = DateText.Of(course.DryDaysAfterSprouting);
            remarks.Add(FindingCatalog.Create(WeatherCodes.SproutsDry, ("kind", kind), ("count", count)));
        }

        if (course.DryDaysBeforeSprouting > 0)
        {
            string count = DateText.Of(course.DryDaysBeforeSprouting);
            remarks.Add(FindingCatalog.Create(WeatherCodes.SwollenDries, ("kind", kind), ("count", count)));
        }

        if (IsEaten(course))
        {
            remarks.Add(
                FindingCatalog.Create(
                    WeatherCodes.SeedEaters,
                    ("kind", kind),
                    ("count", DateText.Of(course.DaysExposed)),
                    ("gone", Amounts.Print(WeatherConstants.All["large-seed-gone"], 0)),
                    ("there", Amounts.Print(WeatherConstants.All["small-seed-there"], 0))
                )
            );
        }

        return Finding.InOrder(remarks);
    }

    /// <summary>Large seed on the surface was gone in days, small seed still there after weeks.</summary>
    private static bool IsEaten(EmergenceCourse course) =>
        course.DaysExposed
        >= (
            course.Kind.SeedCount?.SizeClass is SeedSizeClass.Large or SeedSizeClass.VeryLarge
                ? WeatherConstants.All["large-seed-gone"]
                : WeatherConstants.All["small-seed-there"]
        );
}
