using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
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
        bool isRateAsked = lime is { Printed: not null, Rate.State: AnswerState.Open };
        return new()
        {
            IsTested = plan.IsTested,
            SampleHow = sampling is null ? null : How(sampling),
            NextSample = sampling?.NextFrom is { } from ? new DayWindow(from, from.AddMonths(1)) : null,
            NextSampleBy = sampling is { NextFrom: { } soonest, NextBy: { } by } && by.Year > soonest.Year ? by : null,
            SampleBy = plan.PlantingDate?.AddMonths(-SamplingCardLines.Months),
            TestOn = Told(answers)?.TestOn,
            TestIfLimedBy =
                isRateAsked && Told(answers) is { Expected: null }
                    ? plan.PlantingDate?.AddMonths(-(int)LimingConstants.All["full-effect"])
                    : null,
            TestDecides = Needs(Tested(answers), Told(answers)?.TestOn is not null),
            LateTestOn = Told(answers)?.Expected?.FullEffectOn,
            LateTestDecides = Needs(late, isThenSown: false),
            FirstDressings = lime.Order.OrNull() is { Dressings: { Length: > 1 } parts }
                ? [.. parts.Where(d => d.MonthsAfterFirst == 0).Select(d => d.Number)]
                : [],
            IsLimeRateAsked = isRateAsked,
            IsUnweighed = !plan.Kinds.IsEmpty && answers.Seed.OrNull() is null,
            CoverInstead = CoverInstead(answers),
            BringsBoron = fertilizer?.AtSowing.Any(BringsBoron) == true,
            LegumesLead = LegumesLead(answers),
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
        : verdict.Expected is null && !IsOnFrozenGround(answers) ? verdict.OutOfReach
        : verdict.WithinReach;

    /// <summary>The kinds that only a test after the full effect of the lime decides on.</summary>
    private static ImmutableArray<KindVerdict> Late(PlotAnswers answers) =>
        Told(answers) is { } verdict && (verdict.Expected is not null || IsOnFrozenGround(answers)) ? verdict.OutOfReach : [];

    /// <summary>No sample is taken of it before the seed.</summary>
    private static bool IsOnFrozenGround(PlotAnswers answers) => answers.Plan.Method == PlantingMethod.FrostSeeded;

    /// <summary>A grain goes first: it is cheap and covers soon.</summary>
    private static CropKind? CoverInstead(PlotAnswers answers) =>
        Told(answers) is { Decision: PlotDecision.LimeAndWait } verdict
            ? verdict
                .Substitutes.Where(s => s.TestMustShow is null)
                .OrderByDescending(s => s.Kind.Group == FunctionalGroup.Cereal)
                .Select(s => s.Kind)
                .FirstOrDefault()
            : null;

    /// <summary>Potash that goes on a stand in halves, with boron in it.</summary>
    private static bool BringsBoron(PurchaseLine line) =>
        line.Product.Analysis is var holds && holds.Percent(PlantNutrient.Potash) > 0 && holds.Percent(PlantNutrient.Boron) > 0;

    private static bool LegumesLead(PlotAnswers answers)
    {
        var sown = Told(answers)?.Sown ?? [];
        return sown.Where(v => v.Planned.Kind.IsLegume).Sum(v => v.Planned.Share.ShareOfFullStand)
            > sown.Sum(v => v.Planned.Share.ShareOfFullStand) / 2;
    }

    private static PlotVerdict? Told(PlotAnswers answers) => answers.Verdict.TryGetPart(out var verdict) ? verdict : null;

    private static string? Needs(ImmutableArray<KindVerdict> waiting, bool isThenSown) =>
        waiting.IsEmpty
            ? null
            : string.Join(
                ", ",
                waiting.Select(v =>
                    $"{v.Planned.Kind.ShortName} (pH {Amounts.Print(v.TestMustShow!.Value, 1)} or more{Then(v, isThenSown)})"
                )
            );

    /// <summary>What is sown of it with the rest, once the test allows it.</summary>
    private static string Then(KindVerdict kind, bool isThenSown) =>
        isThenSown && kind.Kept is { } kept
            ? $": then buy it, and sow {Amounts.Print(kept.Weight.ToMass(), "lb", 2)} of it with the seed of its size"
            : "";

    private static string How(SamplingAdvice sampling) =>
        $"{Amounts.Print(sampling.Depth, "in", 0)} deep, {Amounts.Print(sampling.FewestCores, 0)} to "
        + $"{Amounts.Print(sampling.MostCores, 0)} cores";
}
