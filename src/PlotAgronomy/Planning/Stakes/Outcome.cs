using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>What the answers to one plan come to, read off once.</summary>
internal sealed class Outcome
{
    internal static readonly ImmutableArray<PlantNutrient> Bought =
    [
        PlantNutrient.Nitrogen,
        PlantNutrient.Phosphate,
        PlantNutrient.Potash,
    ];

    private readonly Lazy<string> cautions;

    internal Outcome(PlotAnswers answers)
    {
        Plan = answers.Plan;
        var order = answers.Lime.Told.Order;
        var bought = order.OrNull();
        IsLimeOpen = order.State == AnswerState.Open || (bought is null && answers.Lime.Told.Rate.OrNull() is { IsNone: false });
        LimePackages = order.State == AnswerState.NoneNeeded ? 0 : bought?.Bags;
        LimePounds = bought?.Product.Pounds ?? 0;
        LimeCost = IsLimeOpen ? null : bought?.Cost ?? 0;
        LimeRate = answers.Lime.Told.Rate.OrNull();
        FertilizerCost =
            answers.Fertilizer.State == AnswerState.Open
                ? null
                : answers.Fertilizer.Told.AtSowing.Concat(answers.Fertilizer.Told.Later).Sum(l => l.Cost);
        SeedCost = answers.Seed.State == AnswerState.Open ? null : answers.Seed.OrNull()?.Kinds.Sum(k => k.Cost) ?? 0;
        SeedPounds = answers.Seed.OrNull()?.Kinds.Sum(k => k.Weight.Pounds) ?? 0;
        Needs = [.. Bought.Select(n => answers.Need.Told.Find(n)?.AtLeast)];
        Held = [.. answers.Verdict.TryGetPart(out var verdict) ? verdict.Held.Select(v => v.Planned.Kind) : []];
        cautions = new(() => Codes(answers));
    }

    internal PlotPlan Plan { get; }

    /// <summary>Whether lime is needed that cannot be ordered.</summary>
    internal bool IsLimeOpen { get; }

    /// <summary>None where no lime is needed; null where none is ordered, or not in packages.</summary>
    internal int? LimePackages { get; }

    internal double LimePounds { get; }

    /// <summary>Null where it is not known, as are the other costs.</summary>
    internal decimal? LimeCost { get; }

    internal LimeRate? LimeRate { get; }

    internal decimal? FertilizerCost { get; }

    internal decimal? SeedCost { get; }

    internal double SeedPounds { get; }

    /// <summary>What is needed of each nutrient; null where it is not known.</summary>
    internal ImmutableArray<ApplicationRate?> Needs { get; }

    /// <summary>The kinds that may not be sown.</summary>
    internal ImmutableArray<CropKind> Held { get; }

    /// <summary>The codes of all cautions and warnings.</summary>
    internal string Cautions => cautions.Value;

    private static string Codes(PlotAnswers answers) =>
        string.Join(
            ' ',
            answers
                .Findings.Where(f => f.Severity != FindingSeverity.Note)
                .Select(f => f.Code)
                .Distinct()
                .Order(StringComparer.Ordinal)
        );
}
