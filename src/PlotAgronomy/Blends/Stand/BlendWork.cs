using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>The lines of a blend's sums, written out only when asked for.</summary>
internal static class BlendWork
{
    internal static ImmutableArray<WorkedLine> Of(
        ImmutableArray<BlendPart> parts,
        StandTotal standTotal,
        ApplicationRate bulkRate
    )
    {
        var lines = ImmutableArray.CreateBuilder<WorkedLine>();
        foreach (var part in parts)
        {
            var kind = ("kind", part.Kind.ShortName);
            var live = ("live rate", Amounts.Print(part.LiveRate.PoundsPerAcre, 4));
            lines.Add(
                BlendFormulas
                    .All["blend-share-of-full-stand"]
                    .Line(
                        Amounts.Print(part.ShareOfFullStand.Chosen, 4),
                        kind,
                        live,
                        ("full rate alone", Amounts.Print(part.Component.FullRate.PoundsPerAcre, 4))
                    )
            );
            lines.Add(
                BlendFormulas
                    .All["blend-bulk-rate"]
                    .Line(
                        $"{Amounts.Print(part.BulkRate.PoundsPerAcre, 4)} lb/ac",
                        kind,
                        live,
                        ("purity", Amounts.Print(part.Component.PureFraction, 4)),
                        ("viability", Amounts.Print(part.Component.Viability?.Value ?? 1, 4))
                    )
            );
            lines.Add(
                BlendFormulas
                    .All["blend-live-seeds"]
                    .Line(
                        Amounts.Print(part.LiveSeedsPerSquareFoot, 3),
                        kind,
                        live,
                        ("seeds per lb", Amounts.Print(part.Component.SeedsPerPound, 0)),
                        FormulaTable.SquareFeetPerAcre
                    )
            );
        }

        string shares = string.Join(" + ", parts.Select(p => Amounts.Print(p.ShareOfFullStand.Chosen, 3)));
        string rates = string.Join(" + ", parts.Select(p => Amounts.Print(p.BulkRate.PoundsPerAcre, 2)));
        lines.Add(BlendFormulas.Sum("Sum of shares of a full stand", $"{shares} = {standTotal}"));
        lines.Add(BlendFormulas.Sum("Bulk rate of the blend", $"{rates} = {Amounts.Print(bulkRate.PoundsPerAcre, 2)} lb/ac"));
        return lines.ToImmutable();
    }

    /// <summary>From the published full rates to the live rate of one kind; a full rate of the user's own has no line.</summary>
    internal static IEnumerable<WorkedLine> LiveRate(BlendPart part)
    {
        var kind = ("kind", part.Kind.ShortName);
        var component = part.Component;
        string full = Amounts.Print(component.FullRate.PoundsPerAcre, 4);
        if (part.Kind.Rates is { } rates && component.FullRate == component.FullRange.Full)
        {
            var evidence = rates.EvidenceFor(component.Method).Published;
            foreach (var line in FullRate(kind, component.FullRange, evidence))
            {
                yield return line;
            }
        }

        yield return BlendFormulas
            .All["blend-live-rate"]
            .Line(
                $"{Amounts.Print(part.LiveRate.PoundsPerAcre, 4)} lb PLS/ac",
                kind,
                ("share of a full stand", Amounts.Print(part.ShareOfFullStand.Chosen, 4)),
                ("full rate alone", $"{full} lb PLS/ac")
            );
    }

    /// <summary>How the full rate comes out of what is printed, and how many publications stand behind it.</summary>
    private static IEnumerable<WorkedLine> FullRate((string, string) kind, PureLiveSeedRateRange range, Origin? evidence)
    {
        if (range.Made is { } made)
        {
            foreach (var line in FullRate(kind, made.Broadcast, evidence))
            {
                yield return line;
            }

            yield return BlendFormulas
                .All["blend-full-rate-made"]
                .Line(
                    $"{Amounts.Print(range.Full.PoundsPerAcre, 4)} lb PLS/ac",
                    kind,
                    ("method", SowingMethods.InWords(range.Method)),
                    ("broadcast full rate", Amounts.Print(made.Broadcast.Full.PoundsPerAcre, 4)),
                    ("factor", Amounts.Print(made.Factor, 3))
                )
                .From(made.Origin);
            yield break;
        }

        string full = $"{Amounts.Print(range.Full.PoundsPerAcre, 4)} lb PLS/ac{Behind(range)}";
        (string, string) lowest = ("lowest published", Amounts.Print(range.Low.PoundsPerAcre, 4));
        (string, string) highest = ("highest published", Amounts.Print(range.High.PoundsPerAcre, 4));
        (string, string) publications = ("publications on plots and forage", Amounts.Print(range.Publications, 0));
        var formulas = BlendFormulas.All;
        yield return (
            range switch
            {
                { RaisedBy: { } drilled } => formulas["blend-full-rate-raised"]
                    .Line(full, kind, lowest, highest, ("drilled full rate", Amounts.Print(drilled.PoundsPerAcre, 4))),
                { Choice: FullRateChoice.Median } => formulas["blend-full-rate-median"].Line(full, kind, publications),
                { Choice: FullRateChoice.Lowest } => formulas["blend-full-rate-lowest"].Line(full, kind, lowest, highest),
                _ => formulas["blend-full-rate"].Line(full, kind, lowest, highest),
            }
        ).From(evidence);
    }

    private static string Behind(PureLiveSeedRateRange range)
    {
        if (range.Publications == 0)
        {
            return "";
        }

        string few =
            range.Publications == 1 ? "1 publication prints" : $"{Amounts.Print(range.Publications, 0)} publications print";
        string bulk = range.InBulk == 0 ? "" : $", {Amounts.Print(range.InBulk, 0)} in seed as bought";
        return $" ({few} {Amounts.Print(range.Low.PoundsPerAcre, 4)} to {Amounts.Print(range.High.PoundsPerAcre, 4)}{bulk})";
    }

    /// <summary>Bulk seed of one kind to weigh out for an area.</summary>
    internal static WorkedLine Weight(BlendComponent component, double acres, double pounds) =>
        BlendFormulas
            .All["blend-seed-needed"]
            .Line(
                $"{Amounts.Print(pounds, 2)} lb",
                ("kind", component.Kind.ShortName),
                ("bulk rate", $"{Amounts.Print(pounds / acres, 4)} lb/ac"),
                ("area", $"{Amounts.Print(acres, 4)} ac")
            );
}
