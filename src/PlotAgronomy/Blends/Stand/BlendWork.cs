using System.Collections.Immutable;

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
            string name = part.Kind.ShortName;
            string live = Amounts.Print(part.LiveRate.PoundsPerAcre, 4);
            lines.Add(
                new(
                    $"{name}, share of a full stand",
                    "live rate / full rate alone",
                    $"{live} / {Amounts.Print(part.Component.FullRate.PoundsPerAcre, 4)} = "
                        + $"{Amounts.Print(part.ShareOfFullStand.Chosen, 4)}",
                    "SEED-S88"
                )
            );
            lines.Add(
                new(
                    $"{name}, bulk rate",
                    "live rate / (purity x viability)",
                    $"{live} / {Amounts.Print(part.Component.PureLiveFraction, 4)} = "
                        + $"{Amounts.Print(part.BulkRate.PoundsPerAcre, 4)} lb/ac"
                )
            );
            lines.Add(
                new(
                    $"{name}, live seeds per ft2",
                    "live rate x seeds per lb / 43,560",
                    $"{live} x {Amounts.Print(part.Component.SeedsPerPound, 0)} / 43,560 = "
                        + $"{Amounts.Print(part.LiveSeedsPerSquareFoot, 3)}",
                    "DEF-UNITS"
                )
            );
        }

        lines.Add(
            new(
                "Sum of shares of a full stand",
                "sum over the kinds",
                $"{string.Join(" + ", parts.Select(p => Amounts.Print(p.ShareOfFullStand.Chosen, 3)))} = {standTotal}"
            )
        );
        lines.Add(
            new(
                "Bulk rate of the blend",
                "sum over the kinds",
                $"{string.Join(" + ", parts.Select(p => Amounts.Print(p.BulkRate.PoundsPerAcre, 2)))} = "
                    + $"{Amounts.Print(bulkRate.PoundsPerAcre, 2)} lb/ac"
            )
        );
        return lines.ToImmutable();
    }
}
