using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>What a plan knows of place and frost, and what the dates make of its kinds.</summary>
internal static class TimingSolver
{
    /// <summary>The first freeze counts from here on.</summary>
    private static Temperature Freeze => Temperature.FromDegreesFahrenheit(CalendarConstants.All["freeze"]);

    /// <summary>Given whatever is known: without frost the printed windows speak, and frost is asked for. Open without a day,
    /// not asked where nothing is sown or stands.</summary>
    internal static Answer<SowingDates> Dates(PlotPlan plan)
    {
        var kinds = Kinds(plan);
        if (kinds.IsEmpty)
        {
            return Answers.NotAsked<SowingDates>();
        }

        if (plan.PlantingDate is not { } planting)
        {
            return Answers.Open<SowingDates>(() => [PlantingQuestions.Day()]);
        }

        var frost = Frost(plan);
        var dates = SowingDates.Of(kinds, planting, plan.Plot.PlantingRegion, frost.OrNull());
        var region = plan.Plot.PlantingRegion;
        return Answers.Given(
            dates,
            () => frost.Findings,
            () => region is null ? [.. frost.Questions, CalendarQuestions.Where()] : frost.Questions
        );
    }

    /// <summary>Stated dates first, then those of a station's years; else a question.</summary>
    internal static Answer<FrostDates> Frost(PlotPlan plan) =>
        plan.Season switch
        {
            { Frost: { } stated } => Answers.Given(stated, () => stated.Findings),
            { Station: { } station } => FrostDates.FromHistory(station, Freeze),
            _ => Answers.Open<FrostDates>(() => [CalendarQuestions.Frost()]),
        };

    /// <summary>As stated, else the first walked corner; null where neither is known.</summary>
    internal static GeoPoint? Where(PlotPlan plan) => plan.Season?.Where ?? plan.Plot.Measured.Outline?.Origin;

    /// <summary>What is sown; without seed what stands there.</summary>
    internal static ImmutableArray<CropKind> Kinds(PlotPlan plan) => [.. GrownKinds.Of(plan).Select(k => k.Kind)];
}
