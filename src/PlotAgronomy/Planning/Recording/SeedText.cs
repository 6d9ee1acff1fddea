using System.Collections.Immutable;
using System.Text.RegularExpressions;
using PlotAgronomy.Records;
using PlotAgronomy.Seeds;
using UsedLot = PlotAgronomy.Records.SownLot;

namespace PlotAgronomy.Planning;

/// <summary>A pass of seed as an entry: as planned, or by the weights that were really used.</summary>
internal static partial class SeedText
{
    /// <summary>The pass by the plan: every lot with the weight to be weighed out of it.</summary>
    internal static SowingEntry AsPlanned(PlotPlan plan, SowingPass pass, DateOnly on) => Entry(plan, Lots(pass), on);

    /// <summary><c>9 lb</c> of the whole mixture, <c>0.5 lb left</c>, or by kind: <c>oats 20 lb, crimson clover 8 lb</c>; and
    /// <c>2 passes</c>, <c>packed</c>, <c>moist</c> or <c>dry</c>.</summary>
    internal static SowingEntry Instead(PlotPlan plan, SowingPass pass, DateOnly on, string text)
    {
        var planned = Lots(pass);
        var sown = Entry(plan, planned, on);
        var weights = new List<string>();
        foreach (string part in text.Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            string word = part.ToLowerInvariant();
            switch (word)
            {
                case "packed" or "not packed":
                    sown = sown with { IsPacked = word == "packed" };
                    break;
                case "moist" or "dry":
                    sown = sown with { IsMoist = word == "moist" };
                    break;
                default:
                    if (Passes().Match(part) is { Success: true } counted)
                    {
                        sown = sown with { Passes = TypedText.Counts(counted.Groups["passes"].Value, "passes")[0] };
                    }
                    else
                    {
                        weights.Add(part);
                    }

                    break;
            }
        }

        return sown with
        {
            Lots = weights.Count == 0 ? planned : Used(planned, weights),
        };
    }

    private static SowingEntry Entry(PlotPlan plan, ImmutableArray<UsedLot> lots, DateOnly on) =>
        new()
        {
            On = on,
            Plot = plan.Plot.Name,
            Area = plan.Plot.Area,
            Method = plan.ComparedMethod,
            Lots = lots,
        };

    private static ImmutableArray<UsedLot> Lots(SowingPass pass) => [.. pass.Kinds.SelectMany(LotsOf)];

    private static IEnumerable<UsedLot> LotsOf(SownKind kind)
    {
        foreach (var rest in kind.FromOthers)
        {
            yield return new() { Lot = rest.Offer.Item, Used = BulkSeedMass.FromPounds(rest.Weight.Pounds) };
        }

        if (kind.PoundsOfPlannedLot is > 0 and var pounds)
        {
            yield return new() { Lot = kind.Planned.Offer.Item, Used = BulkSeedMass.FromPounds(pounds) };
        }
    }

    private static ImmutableArray<UsedLot> Used(ImmutableArray<UsedLot> planned, List<string> typed)
    {
        double all = planned.Sum(l => l.Used.Pounds);
        if (typed is [var one] && Left().Match(one) is { Success: true } left)
        {
            return Scaled(planned, 1 - TypedText.Weight(left.Groups["weight"].Value).Pounds / all);
        }

        if (typed is [var whole] && Amounts.TryReadMass(whole, out var used, out _))
        {
            return Scaled(planned, used.Pounds / all);
        }

        var lots = planned;
        foreach (var said in typed.Select(t => OfKind().Match(t)))
        {
            if (!said.Success)
            {
                throw new FormatException("say the weight that went out, 9 lb, or what is left, 0.5 lb left, or a weight a kind");
            }

            var kind = TypedText.Kind(said.Groups["kind"].Value);
            ImmutableArray<UsedLot> ofKind = [.. planned.Where(l => l.Lot.Kind.Id == kind.Id)];
            if (ofKind.IsEmpty)
            {
                throw new FormatException($"{kind.ShortName} is not in this pass");
            }

            double pounds = TypedText.Weight(said.Groups["weight"].Value).Pounds;
            lots = [.. lots.Except(ofKind), .. Scaled(ofKind, pounds / ofKind.Sum(l => l.Used.Pounds))];
        }

        return lots;
    }

    private static ImmutableArray<UsedLot> Scaled(ImmutableArray<UsedLot> lots, double factor) =>
        factor > 0
            ? [.. lots.Select(l => l with { Used = BulkSeedMass.FromPounds(l.Used.Pounds * factor) })]
            : throw new FormatException("nothing would have gone out: say none where nothing was sown");

    [GeneratedRegex(@"^(?<passes>\d+)\s*(?:passes|pass|times|ways)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Passes();

    [GeneratedRegex(@"^(?<weight>.+?)\s+left$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Left();

    [GeneratedRegex(@"^(?<kind>[^\d]+?)\s*:?\s+(?<weight>[\d.].*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex OfKind();
}
