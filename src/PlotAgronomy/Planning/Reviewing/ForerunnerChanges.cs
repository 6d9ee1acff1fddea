using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Records;

namespace PlotAgronomy.Planning;

/// <summary>What grew on the plot goes into the next plan, and the nitrogen that a legume leaves.</summary>
internal static class ForerunnerChanges
{
    internal static IEnumerable<PlanChange> Of(PlotPlan last, PlotBook book, DateOnly on)
    {
        ImmutableArray<SowingEntry> sown =
        [
            .. book.Of<SowingEntry>(last.Plot.Name).Where(s => s.On <= on && s.On.AddYears(1) > on),
        ];
        if (Main(last, book, sown) is not { } main)
        {
            yield break;
        }

        if (last.Plot.GrewBefore?.Id != main.Id)
        {
            yield return new()
            {
                What = "what grew before",
                From = last.Plot.GrewBefore?.ShortName ?? "not stated",
                To = main.ShortName,
                Reason = "It had the largest part of what stood this year; what it leaves and what may follow depend on it.",
                Entries = [.. sown],
                Apply = plan => plan with { Plot = plan.Plot with { GrewBefore = main } },
            };
        }

        if (main.IsLegume && last.Kinds.Any(k => !k.Kind.IsLegume))
        {
            yield return Credit(last, main, sown);
        }
    }

    /// <summary>The published credit that names the legume; of several, that of the plan's own system.</summary>
    private static PlanChange Credit(PlotPlan last, CropKind legume, ImmutableArray<SowingEntry> sown)
    {
        ImmutableArray<LegumeCredit> fitting =
        [
            .. LegumeCredit.All.Where(c =>
                !c.IsForExistingStand && c.Legume.Contains(legume.CommonName, StringComparison.OrdinalIgnoreCase)
            ),
        ];
        var credit =
            last.LegumeCredit is { } stated && fitting.Contains(stated)
                ? stated
                : fitting.FirstOrDefault(c => c.Institution == last.NutrientSystem?.Institution)
                    ?? (fitting is [var only] ? only : null);
        string left = $"nitrogen left by {legume.ShortName}";
        return credit is null
            ? new()
            {
                What = left,
                From = "",
                To = "no publication here names it by itself: count none, or name a credit as methods.legumeCredit",
                Reason = "A legume leaves nitrogen to the grain after it.",
                Entries = [.. sown],
            }
            : new()
            {
                What = left,
                From = last.LegumeCredit?.Id ?? "none counted",
                To = credit.Id,
                Reason =
                    $"{credit}: {Amounts.Print(credit.Low, "lb/ac", 0)} to {Amounts.Print(credit.High, "lb/ac", 0)}, "
                    + $"{credit.Condition}. Leave it out where the stand was thinner.",
                Entries = [.. sown],
                IsChoice = true,
                Apply = plan => plan with { LegumeCredit = credit },
            };
    }

    /// <summary>The kind with the largest share of a full stand among those that were sown and did not fail.</summary>
    private static CropKind? Main(PlotPlan last, PlotBook book, ImmutableArray<SowingEntry> sown)
    {
        var failed = StandOutcome
            .All(book, last.Plot.Name)
            .Where(s => s.TryGet(out _))
            .Select(s => s.Value)
            .Where(s => s.Verdict == StandVerdict.Failed && s.Sowings.Any(sown.Contains))
            .Select(s => s.Count.Kind?.Id)
            .ToHashSet();
        var kinds = sown.SelectMany(s => s.Kinds).Select(k => k.Id).ToHashSet();
        return last
            .Kinds.Where(k => kinds.Contains(k.Kind.Id) && !failed.Contains(k.Kind.Id))
            .MaxBy(k => k.Share.ShareOfFullStand)
            ?.Kind;
    }
}
