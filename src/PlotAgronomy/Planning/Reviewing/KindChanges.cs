using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Records;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>Which kinds are left out, which come in, and at what rate.</summary>
internal static class KindChanges
{
    internal static IEnumerable<PlanChange> Of(PlotPlan last, NextYear next)
    {
        var changes = new List<PlanChange>();
        var kinds = last.Kinds;
        foreach (var asked in next.Suggestions)
        {
            var change =
                asked.Family is { } family ? LeftOut(asked, kinds, family.Holds)
                : asked.Emergence is { } emergence ? Rate(asked, kinds, emergence)
                : asked.Why.Code == RecordCodes.FailedTwice ? LeftOut(asked, kinds, k => k.Id == asked.Kinds[0].Id)
                : asked.Why.Code == RecordCodes.OldClover
                    ? ToDecide(
                        asked,
                        "old clover",
                        "a grain or a brassica for a year, or the clover once more when the grass is dead"
                    )
                : Added(asked, last, kinds);
            if (change is not null)
            {
                changes.Add(change);
                kinds = change.Apply is { } apply ? apply(last with { Kinds = kinds }).Kinds : kinds;
            }
        }

        return changes;
    }

    /// <summary>The others take the room of what is left out; nothing is left out where nothing would remain.</summary>
    private static PlanChange? LeftOut(Suggestion asked, ImmutableArray<PlannedKind> kinds, Func<CropKind, bool> isOut)
    {
        ImmutableArray<PlannedKind> gone = [.. kinds.Where(k => isOut(k.Kind))];
        if (gone.IsEmpty)
        {
            return null;
        }

        string names = string.Join(", ", gone.Select(k => k.Kind.ShortName));
        ImmutableArray<CropKind> left = [.. gone.Select(k => k.Kind)];
        return gone.Length == kinds.Length
            ? ToDecide(asked, names, "nothing else is in the plan: choose what takes its place")
            : new()
            {
                What = names,
                From = "sown",
                To = "left out, the others take its room",
                Reason = asked.Why.Text,
                Entries = asked.From,
                IsChoice = true,
                Apply = plan => plan with { Kinds = Without(plan.Kinds, left) },
            };
    }

    private static ImmutableArray<PlannedKind> Without(ImmutableArray<PlannedKind> kinds, ImmutableArray<CropKind> gone)
    {
        ImmutableArray<PlannedKind> rest = [.. kinds.Where(k => gone.All(g => g.Id != k.Kind.Id))];
        double factor = Total(kinds) / Total(rest);
        return [.. rest.Select(k => k with { Share = KindShare.FromShare(k.Kind, k.Share.ShareOfFullStand * factor) })];
    }

    private static double Total(ImmutableArray<PlannedKind> kinds) => kinds.Sum(k => k.Share.ShareOfFullStand);

    private static PlanChange? Rate(Suggestion asked, ImmutableArray<PlannedKind> kinds, double emergence)
    {
        var kind = asked.Kinds[0];
        if (kinds.FirstOrDefault(k => k.Kind.Id == kind.Id) is not { } planned || emergence > 1)
        {
            return null;
        }

        var own = Fraction.FromValue(Math.Round(emergence, 2, MidpointRounding.AwayFromZero));
        return planned.OwnEmergence == own
            ? null
            : new()
            {
                What = $"rate of {kind.ShortName}",
                From = planned.OwnEmergence is { } known ? $"for {Amounts.Print(known, 0)} up" : "usual",
                To = $"for {Amounts.Print(own, 0)} up, {Amounts.Print(NextYear.FactorOf(own.Value), 2)} times the usual",
                Reason = asked.Why.Text,
                Entries = asked.From,
                IsChoice = true,
                Apply = plan =>
                    plan with
                    {
                        Kinds = [.. plan.Kinds.Select(k => k.Kind.Id == kind.Id ? k with { OwnEmergence = own } : k)],
                    },
            };
    }

    /// <summary>A kind that feeds in the bare month, of a lot that is on offer; without one, the owner is told.</summary>
    private static PlanChange Added(Suggestion asked, PlotPlan last, ImmutableArray<PlannedKind> kinds)
    {
        var choice = asked
            .Kinds.Where(k => last.Kinds.All(p => p.Kind.Id != k.Id))
            .Select(k => SeedShelf.FromOffers(last.SeedOffers).Cheapest(k))
            .FirstOrDefault(c => c.Offer is { Item.IsUntagged: false });
        if (choice?.Offer is not { } offer)
        {
            return ToDecide(asked, "a bare month", "no lot of such a kind is on offer: add one, or choose another plot for it");
        }

        double share = SeasonCoverage.For(kinds.Select(k => k.Share)).ShareWanted;
        return new()
        {
            What = offer.Item.Kind.ShortName,
            From = "not sown",
            To = $"sown at {Amounts.Print(share, 2)} of a full stand",
            Reason = asked.Why.Text,
            Entries = asked.From,
            IsChoice = true,
            Apply = plan =>
                plan with
                {
                    Kinds =
                    [
                        .. plan.Kinds,
                        new()
                        {
                            Share = KindShare.FromShare(offer.Item.Kind, share),
                            Choice = choice,
                            Offer = offer,
                        },
                    ],
                },
        };
    }

    private static PlanChange ToDecide(Suggestion asked, string what, string to) =>
        new()
        {
            What = what,
            From = "",
            To = to,
            Reason = asked.Why.Text,
            Entries = asked.From,
        };
}
