using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>What a season sows: only kinds that the verdict lets in.</summary>
internal static class SeasonPasses
{
    /// <summary>The passes as they are spread; where they are not known all that is sown in one, and of a stand its kinds. None
    /// where nothing is sown.</summary>
    internal static ImmutableArray<SeasonPass> Of(PlotAnswers answers)
    {
        if (GrownKinds.IsUpkeep(answers.Plan))
        {
            return [new() { Kinds = TimingSolver.Kinds(answers.Plan) }];
        }

        if (answers.Spreading.OrNull() is { } spreading)
        {
            return
            [
                .. spreading.Passes.Select(p => new SeasonPass
                {
                    Kinds = [.. p.Kinds.Select(k => k.Planned.Kind)],
                    IsCovered = p.Group.SownBeforeCovering,
                }),
            ];
        }

        ImmutableArray<CropKind> sown =
        [
            .. answers.Verdict.TryGetPart(out var verdict) ? verdict.Sown.Select(v => v.Planned.Kind) : [],
        ];
        return sown.IsEmpty ? [] : [new() { Kinds = sown }];
    }

    /// <summary>What is sown in a pass; all of the seed while passes are not known.</summary>
    internal static ImmutableArray<SownKind> KindsOf(PlotAnswers answers, int pass) =>
        answers.Spreading.OrNull() is { } spreading
            ? spreading.Passes.FirstOrDefault(p => p.Number == pass)?.Kinds ?? []
            : answers.Seed.OrNull()?.Kinds ?? [];
}
