using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>What the rooms chose for a season: tests and what they decide, dressings, cores, the state of a stand.</summary>
internal static class ChoicesForSeason
{
    internal static SeasonChoices Of(PlotAnswers answers, FertilizerAnswer? fertilizer)
    {
        var plan = answers.Plan;
        var lime = answers.Lime.Told;
        var sampling = answers.Soil.Told.Sampling.OrNull();
        var late = Late(answers);
        var stand = StandUpkeep.Of(plan);
        return new()
        {
            IsTested = plan.IsTested,
            SampleHow = sampling is null ? null : How(sampling),
            NextSample = sampling is { NextFrom: { } from, NextBy: { } by } ? new DayWindow(from, by) : null,
            TestOn = Told(answers)?.Expected?.TestBeforeSowingOn,
            TestDecides = Needs(Tested(answers)),
            LateTestOn = Told(answers)?.Expected?.FullEffectOn,
            LateTestDecides = Needs(late),
            FirstDressings = lime.Order.OrNull() is { Dressings: { Length: > 1 } parts }
                ? [.. parts.Where(d => d.MonthsAfterFirst == 0).Select(d => d.Number)]
                : [],
            IsLimeRateAsked = lime is { Printed: not null, Rate.State: AnswerState.Open },
            HasSeveralFertilizers = fertilizer?.AtSowing.Length > 1,
            CoverKind = plan.Plot.CoverKind,
            ThickenBelow = StandUpkeep.ThickenBelow,
            IsThin = stand is { IsThin: true },
            SeedingDates = stand is { SeedingDates: { IsEmpty: false } dates } ? string.Join("; ", dates) : null,
        };
    }

    /// <summary>The kinds that a test before sowing decides on: within reach of the lime; where no forecast is known all that
    /// wait for a test.</summary>
    internal static ImmutableArray<KindVerdict> Tested(PlotAnswers answers) =>
        Told(answers) is not { } verdict ? []
        : verdict.Expected is null ? verdict.OutOfReach
        : verdict.WithinReach;

    /// <summary>The kinds that only a test after the full effect of the lime decides on.</summary>
    private static ImmutableArray<KindVerdict> Late(PlotAnswers answers) =>
        Told(answers) is { Expected: not null } verdict ? verdict.OutOfReach : [];

    private static PlotVerdict? Told(PlotAnswers answers) => answers.Verdict.TryGetPart(out var verdict) ? verdict : null;

    private static string? Needs(ImmutableArray<KindVerdict> waiting) =>
        waiting.IsEmpty
            ? null
            : string.Join(
                ", ",
                waiting.Select(v => $"{v.Planned.Kind.ShortName} (pH {Amounts.Print(v.TestMustShow!.Value, 1)} or more)")
            );

    private static string How(SamplingAdvice sampling) =>
        $"{Amounts.Print(sampling.Depth, "in", 0)} deep, {Amounts.Print(sampling.FewestCores, 0)} to "
        + $"{Amounts.Print(sampling.MostCores, 0)} cores";
}
